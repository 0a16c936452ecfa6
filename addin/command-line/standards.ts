import { OWN_SHEET, ownTemplate } from "../../core/own";
import { type Coverage, coverage, resolveStandard, STANDARD_IDS, type Standard } from "../../core/standards";
import { isRefusal } from "../../core/units/refusal";
import { writeNewWorkbook } from "../xlsx/write/new-workbook";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { STANDARD_OPTIONS, standardInForce } from "./standard-for";
import type { Streams } from "./streams";
import { writeCopy } from "./write-copy";

/** `standards`: the documents held, and what each of them holds; a sheet to look their figures up on. */
export const standards: Command = {
  name: "standards",
  usage: "standards [--sheet OUT.xlsx] [--standard ID] [--own FILE] [--json]",
  summary: "the standards held, and how far each number may be trusted; a sheet to look them up on",
  options: { json: { type: "boolean" }, sheet: { type: "string" }, ...STANDARD_OPTIONS },
  async run(given, streams) {
    if (given.positionals.length > 0) throw new InputRefused("standards takes no arguments");
    const inForce = standardInForce(given, null, streams);
    const target = given.text("sheet");
    if (target !== null) writeSheet(target, inForce, streams);
    const ids = given.text("standard") === null ? STANDARD_IDS : inForce.id.split("+");
    const held = ids.flatMap((id) => {
      const standard = resolveStandard(id, inForce.own);
      return isRefusal(standard) ? [] : coverage(standard, inForce.own);
    });
    if (given.flag("json")) {
      streams.result(JSON.stringify({ standards: held }));
      return 0;
    }
    const width = Math.max(...held.map(({ id }) => id.length));
    for (const document of held) {
      streams.result(`${document.id.padEnd(width)}  ${document.title}`);
      streams.result(`${" ".repeat(width)}  ${contents(document)}`);
      streams.result(`${" ".repeat(width)}  ${trust(document)}`);
    }
    return 0;
  },
};

/** A workbook with the sheet Standard for the document in force, to be filled in and used, or taken along with --own. */
function writeSheet(target: string, { id, own }: Standard, streams: Streams): void {
  if (!/\.xlsx$/i.test(target)) throw new InputRefused(`${target} is no .xlsx: name the workbook to write`);
  const rows = ownTemplate(id.split("+"), own);
  const cells = rows.map(({ kind, cells }) =>
    cells.map((value) => (kind === "line" ? value : { value, look: { bold: true } })),
  );
  writeCopy(target, writeNewWorkbook({ sheets: [{ name: OWN_SHEET, rows: cells, widths: WIDTHS }] }));
  const figures = rows.filter(({ kind }) => kind === "line").length;
  streams.note(`written: ${target}, ${figures} lines to look up in ${id}`);
}

/** characters, by column */
const WIDTHS = [14, 44, 34, 7, 22, 46, 24, 18, 12];

function contents({ unit, bars, shapes, tables }: Coverage): string {
  return `lengths in ${unit}; ${bars} sizes, ${shapes} shape codes, ${tables} tables`;
}

/** "published 237 (237 checked), memory 12 (0 checked)" and where sources differ. */
function trust({ values, conflicts }: Coverage): string {
  const kinds = Object.entries(values).filter(([, { held }]) => held > 0);
  const counts = kinds.map(([kind, { held, checked }]) => `${kind} ${held} (${checked} checked)`);
  const differ = conflicts === 0 ? "" : `; ${conflicts} places where sources differ`;
  return `values: ${counts.join(", ")}${differ}`;
}
