import { annotatedCopy } from "../../addin/command-line/annotated-copy";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { runAudit } from "../../core/audit/run-audit";
import type { Cell } from "../../core/schedule";
import { resolveStandard, type Standard } from "../../core/standards";

export const HEADER =
  "Member,Bar mark,Size,No. of mbrs,No. in each,Total no.,Length (mm),Shape code,A,Pour".split(",");
const standard = resolveStandard("BS8666:2005") as Standard;

/** A straight bar: its length is its leg, so that its mass is count x length x kg/m. */
export function bar(
  mark: string,
  size: string,
  count: number,
  length: number,
  pour: string | null,
  member = "B1",
) {
  return [member, mark, size, 1, count, count, length, "00", length, pour];
}

/** Three bars in two pours, the second of an awkward name. */
export const TWO_POURS = [
  HEADER,
  bar("01", "H16", 12, 2000, "P1"),
  bar("02", "H20", 10, 3000, "P1"),
  bar("03", "H16", 4, 3000, "Slab & <kerb>, north"),
];

/** A workbook of one sheet. */
export function bookOf(rows: readonly (readonly Cell[])[], name = "Bars"): Uint8Array {
  return writeNewWorkbook({ sheets: [{ name, rows }] });
}

/** The workbook as a check leaves it, under BS 8666:2005. */
export function checked(bytes: Uint8Array): { bytes: Uint8Array; kept: readonly string[] } {
  const workbook = openWorkbook(bytes);
  const sheets = workbook.sheets.map(({ name }) => workbook.read(name));
  const { pieces, kept } = annotatedCopy(workbook, runAudit({ sheets, standard }), sheets);
  return { bytes: new Uint8Array(Buffer.concat([...pieces])), kept };
}

/** The findings sheet by address, and all its cells. */
export function findingsCells(
  bytes: Uint8Array,
  name = "Findings",
): { at: (address: string) => Cell; all: Cell[] } {
  const sheet = openWorkbook(bytes).read(name);
  const all = Array.from({ length: sheet.rowCount * sheet.columnCount }, (_, index) =>
    sheet.cell(Math.floor(index / sheet.columnCount), index % sheet.columnCount),
  );
  const at = (address: string): Cell => {
    const [, letter = "", row = ""] = /^\$?([A-Z])\$?(\d+)$/.exec(address) ?? [];
    return sheet.cell(Number(row) - 1, letter.charCodeAt(0) - 65);
  };
  return { at, all };
}
