import { addressAt } from "../../core/schedule/cell-address";
import { hasBarFunction } from "../workbook/bar-formula-names";
import { functionEnvironment } from "../workbook/function-environment";
import { patchWorkbook } from "../xlsx/patch/patch-workbook";
import type { Command, ExitCode } from "./command";
import { InputRefused } from "./input-refused";
import { type BooksNamed, booksNamed } from "./job/books-named";
import { copyPlaces, writeInPlace } from "./job/copy-places";
import { tried } from "./job/open-books";
import { nativeDeflater } from "./native-deflater";
import { openBook } from "./open-book";
import type { GivenOptions } from "./read-options";
import { countErrors, type PlacedWrite, recalculateBook } from "./recalculate-book";
import { STANDARD_OPTIONS, standardInForce } from "./standard-for";
import type { Streams } from "./streams";
import { refuseKind, refuseTarget, writeCopy } from "./write-copy";

/** `recalc BOOK --out COPY`: BAR formulas evaluated and stored as Excel stores an add-in's. */
export const recalc: Command = {
  name: "recalc",
  usage: "recalc BOOK... --out COPY | FOLDER [--values] [--standard ID] [--own FILE] [--json]",
  summary: "a copy whose BAR formulas show their values without the add-in",
  options: {
    out: { type: "string" },
    values: { type: "boolean" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const out = given.text("out");
    const named = booksNamed(given.positionals);
    if (out === null)
      throw new InputRefused(
        "name, with --out, the copy to write, or a folder for the copies of several books",
      );
    const [path] = named.paths;
    if (named.isJob || path === undefined) return recalcJob(named, out, given, streams);
    refuseTarget(path, out);
    const { notes, ...told } = recalculate(path, out, given, streams, writeCopy);
    if (given.flag("json")) streams.result(JSON.stringify(told));
    else tell(told, streams);
    for (const note of notes) streams.note(note);
    streams.note(lastNote(given));
    return 0;
  },
};

function lastNote(given: GivenOptions): string {
  return given.flag("values")
    ? "results of BAR formulas are plain values in the copy, which follow no edit: keep the book that holds the formulas"
    : "formulas of other functions that lean on nothing that changed keep their stored results";
}

/** Every book by itself; one that cannot be read is named and the rest goes on. */
async function recalcJob(
  named: BooksNamed,
  out: string,
  given: GivenOptions,
  streams: Streams,
): Promise<ExitCode> {
  const places = copyPlaces(named, out);
  for (const note of named.notes) streams.note(note);
  const books: ({ book: string } & (Omit<Recalculated, "notes"> | { error: string }))[] = [];
  for (const [path, copy] of places) {
    const done = tried(() => recalculate(path, copy, given, streams, writeInPlace));
    if (done instanceof Error) {
      streams.note(`not read: ${path}: ${done.message}`);
      books.push({ book: path, error: done.message });
      continue;
    }
    const { notes, ...told } = done;
    books.push({ book: path, ...told });
    if (!given.flag("json")) tell(told, streams, `${path}: `);
    for (const note of notes) streams.note(`${path}: ${note}`);
  }
  const read = books.flatMap((one) => ("error" in one ? [] : [one]));
  const job = {
    books: books.length,
    unreadable: books.flatMap((one) => ("error" in one ? [{ book: one.book, why: one.error }] : [])),
    formulas: read.reduce((sum, { formulas }) => sum + formulas, 0),
    errors: read.reduce((sum, { errors }) => sum + errors, 0),
  };
  if (given.flag("json")) streams.result(JSON.stringify({ books, job }));
  else
    streams.result(
      `${job.books} books, ${job.unreadable.length} not read; ${job.formulas} BAR formulas, ${job.errors} cells show an error`,
    );
  streams.note(lastNote(given));
  return job.unreadable.length > 0 ? 2 : 0;
}

interface Recalculated {
  readonly standard: string;
  readonly formulas: number;
  readonly errors: number;
  readonly left: ReturnType<typeof recalculateBook>["left"];
  readonly notes: readonly string[];
}

function recalculate(
  path: string,
  out: string,
  given: GivenOptions,
  streams: Streams,
  write: typeof writeCopy,
): Recalculated {
  const book = openBook(path);
  if (book.workbook === null) throw new InputRefused("a .csv holds no formulas: name an .xlsx file");
  refuseKind(book.workbook, out);
  const standard = standardInForce(given, book, streams);
  const environment = functionEnvironment(book.workbook, standard.id, standard.own);
  const { writes, stale, formulas, believed, left } = recalculateBook(book.workbook, environment);
  const shown = given.flag("values") ? asValue : (write: PlacedWrite) => write;
  const sheets = new Map(
    [...new Set([...writes.keys(), ...stale.keys()])].map((sheet) => [
      sheet,
      { writes: (writes.get(sheet) ?? []).map(shown), stale: stale.get(sheet) ?? [] },
    ]),
  );
  const keepsResults = stale.size === 0;
  write(out, patchWorkbook(book.workbook, { sheets, keepsResults }, { newDeflater: nativeDeflater }));
  const doubted = believed.map(({ sheet, cell }) => `${sheet}!${cell}`);
  const withoutResult = [...stale].flatMap(([sheet, cells]) =>
    cells.map(({ row, column }) => `${sheet}!${addressAt(row, column)}`),
  );
  const notes: string[] = [];
  if (doubted.length > 0)
    notes.push(
      `BAR formulas lean on ${someOf(doubted)}, whose stored results may be out of date, as the file asks to be calculated when it is opened: open it in a spreadsheet program, save it, and recalculate again`,
    );
  if (withoutResult.length > 0)
    notes.push(
      `${someOf(withoutResult)} lean on cells that changed and call functions that only a spreadsheet program computes: their old results were taken out`,
    );
  return { standard: standard.id, formulas, errors: countErrors(writes), left, notes };
}

/** A BAR formula's result alone, which every spreadsheet program shows; other formulas are known to all. */
function asValue(write: PlacedWrite): PlacedWrite {
  const { row, column, value, formula } = write;
  const isOurs = formula !== undefined && hasBarFunction(formula);
  return isOurs ? { row, column, value, endsFormula: true } : write;
}

function tell(
  { standard, formulas, errors, left }: Omit<Recalculated, "notes">,
  streams: Streams,
  of = "",
): void {
  streams.result(
    `${of}${standard}: ${formulas} BAR formulas, ${formulas - left.length} computed, ${errors} cells show an error`,
  );
  for (const { sheet, cell, reason } of left)
    streams.result(`  ${sheet}!${cell} is left as it was: ${reason}`);
}

function someOf(cells: readonly string[]): string {
  const some = cells.slice(0, 5).join(", ");
  return cells.length > 5 ? `${some} and ${cells.length - 5} more` : some;
}
