import { cellAddress } from "../workbook/cell-address";
import { functionEnvironment } from "../workbook/function-environment";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { nativeDeflater } from "./native-deflater";
import { openBook } from "./open-book";
import { countErrors, recalculateBook } from "./recalculate-book";
import { STANDARD_OPTIONS, standardInForce } from "./standard-for";
import { refuseKind, refuseTarget, writeCopy } from "./write-copy";

/** `recalc BOOK --out COPY`: BAR formulas evaluated and stored as Excel stores an add-in's. */
export const recalc: Command = {
  name: "recalc",
  usage: "recalc BOOK --out COPY [--standard ID] [--own FILE] [--json]",
  summary: "a copy whose BAR formulas show their values without the add-in",
  options: { out: { type: "string" }, ...STANDARD_OPTIONS, json: { type: "boolean" } },
  async run(given, streams) {
    const [path, more] = given.positionals;
    const out = given.text("out");
    if (path === undefined || more !== undefined || out === null) {
      throw new InputRefused("name one .xlsx file and, with --out, the copy to write");
    }
    refuseTarget(path, out);
    const book = openBook(path);
    if (book.workbook === null) throw new InputRefused("a .csv holds no formulas: name an .xlsx file");
    refuseKind(book.workbook, out);
    const standard = standardInForce(given, book, streams);
    const environment = functionEnvironment(book.workbook, standard.id, standard.own);
    const { writes, stale, formulas, believed, left } = recalculateBook(book.workbook, environment);
    const sheets = new Map(
      [...new Set([...writes.keys(), ...stale.keys()])].map((sheet) => [
        sheet,
        { writes: writes.get(sheet) ?? [], stale: stale.get(sheet) ?? [] },
      ]),
    );
    const keepsResults = stale.size === 0;
    writeCopy(out, patchWorkbook(book.workbook, { sheets, keepsResults }, nativeDeflater));
    const doubted = believed.map(({ sheet, cell }) => `${sheet}!${cell}`);
    const withoutResult = [...stale].flatMap(([sheet, cells]) =>
      cells.map(({ row, column }) => `${sheet}!${cellAddress(row, column)}`),
    );
    const errors = countErrors(writes);
    if (given.flag("json")) streams.result(JSON.stringify({ standard: standard.id, formulas, errors, left }));
    else {
      streams.result(
        `${standard.id}: ${formulas} BAR formulas, ${formulas - left.length} computed, ${errors} cells show an error`,
      );
      for (const { sheet, cell, reason } of left)
        streams.result(`  ${sheet}!${cell} is left as it was: ${reason}`);
    }
    if (doubted.length > 0) {
      streams.note(
        `BAR formulas lean on ${someOf(doubted)}, whose stored results may be out of date, as the file asks to be calculated when it is opened: open it in a spreadsheet program, save it, and recalculate again`,
      );
    }
    if (withoutResult.length > 0) {
      streams.note(
        `${someOf(withoutResult)} lean on cells that changed and call functions that only a spreadsheet program computes: their old results were taken out`,
      );
    }
    streams.note("formulas of other functions that lean on nothing that changed keep their stored results");
    return 0;
  },
};

function someOf(cells: readonly string[]): string {
  const some = cells.slice(0, 5).join(", ");
  return cells.length > 5 ? `${some} and ${cells.length - 5} more` : some;
}
