import { hasOwnName, ownTemplate } from "../../../core/own";
import { type Cell, isCellError } from "../../../core/schedule/sheet";
import type { SheetCell, SheetContent } from "../../workbook/workbook-port";
import { openWorkbook } from "../../xlsx/read/open-workbook";
import type { KeptCheck } from "./kept-check";

/** characters, by column */
const WIDTHS = [14, 44, 34, 7, 22, 46, 24, 18, 12];

/** A sheet Standard for the documents that a check went by: what is to be looked up, and what is known already. */
export function ownContent({
  audit: {
    report: { standard },
  },
}: KeptCheck): SheetContent {
  const rows = ownTemplate(standard.id.split("+"), standard.own);
  return {
    rows: rows.map(({ kind, cells }) =>
      cells.map((cell) => plain(cell, kind === "title" || kind === "head")),
    ),
    widths: WIDTHS,
  };
}

/** The sheet Standard of another workbook, cell by cell. Throws where it has none. */
export function ownContentOfFile(bytes: Uint8Array): SheetContent {
  const book = openWorkbook(bytes);
  const named = book.sheets.find(({ name }) => hasOwnName(name));
  if (named === undefined) {
    const names = book.sheets.map(({ name }) => name).join(", ");
    throw new Error(`the file has no sheet Standard, only ${names}: choose a workbook that holds one`);
  }
  const sheet = book.read(named.name);
  const row = (at: number): SheetCell[] =>
    at < sheet.top
      ? []
      : Array.from({ length: sheet.left + sheet.columnCount }, (_, column) =>
          plain(column < sheet.left ? null : sheet.cell(at - sheet.top, column - sheet.left), false),
        );
  return { rows: Array.from({ length: sheet.top + sheet.rowCount }, (_, at) => row(at)), widths: WIDTHS };
}

function plain(cell: Cell, bold: boolean): SheetCell {
  const isError = cell !== null && isCellError(cell);
  const value = isError ? cell.error : typeof cell === "boolean" ? String(cell) : cell;
  return { value, ...(bold && { bold }) };
}
