import { addressAt } from "../../core/schedule/cell-address";
import { parseAddress } from "../workbook/cell-address";
import { type CellEdit, PartlyWritten, type UndoStep, WorkbookRefusal } from "../workbook/workbook-port";
import { runBatch } from "./run-batch";
import { changesWhenTyped } from "./text-as-typed";

const TEXT_FORMAT = "@";
const CELLS_PER_REQUEST = 20_000;
const CHARACTERS_PER_REQUEST = 1_000_000;

type Written = string | number;

interface PlacedEdit {
  readonly row: number;
  readonly column: number;
  readonly to: Written;
}

/** Cells of one column that follow one another. */
interface Run {
  readonly row: number;
  readonly column: number;
  readonly edits: PlacedEdit[];
}

interface CellBefore {
  readonly row: number;
  readonly column: number;
  /** formula, or value where there is none */
  readonly content: string | number | boolean;
  readonly format: string;
  readonly written: Written;
}

/**
 * Writes values: one request to look, one to write for each 20,000 cells or megabyte. A text that Excel
 * would take for a number, a date or a formula goes into a cell formatted as text first; other formats
 * stay. Gives the way back, which does nothing where a cell has been changed since. Where a request fails
 * when others were written, the refusal carries the way back.
 */
export async function writeCells(name: string, asked: readonly CellEdit[]): Promise<UndoStep> {
  const edits = await withoutFormulas(name, asked);
  if (edits.length === 0) return async () => true;
  const runs = runsOf(edits.map(placed));
  const progress: WriteProgress = { sheet: name, before: [], sent: 0 };
  try {
    await runBatch(
      async (context) => {
        Object.assign(progress, await look(context, name, runs));
        await write(context, runs, progress);
      },
      { oneUndoStep: true, sheet: name },
    );
  } catch (problem) {
    throw halfWritten(progress, runs, problem);
  }
  return () => takeBack(progress.sheet, runs, progress.before, false);
}

/** Those of the cells that hold a formula: one request. */
export async function formulaCells(name: string, cells: readonly string[]): Promise<ReadonlySet<string>> {
  const runs = runsOf(cells.map((cell) => placed({ cell, to: "" })));
  return runBatch(
    async (context) => {
      const sheet = context.workbook.worksheets.getItem(name);
      const ranges = runs.map((run) => rangeOf(sheet, run).load("formulas"));
      await context.sync();
      const found = runs.flatMap(({ edits }, index) =>
        edits.filter((_, row) => String(ranges[index]?.formulas[row]?.[0]).startsWith("=")),
      );
      return new Set(found.map(({ row, column }) => addressAt(row, column)));
    },
    { sheet: name },
  );
}

/** Without edits that leave a formula alone and would meet one. */
async function withoutFormulas(name: string, edits: readonly CellEdit[]): Promise<readonly CellEdit[]> {
  const carried = edits.filter(({ keepsFormula }) => keepsFormula === true).map(({ cell }) => cell);
  if (carried.length === 0) return edits;
  const formulas = await formulaCells(name, carried);
  return edits.filter(({ cell, keepsFormula }) => keepsFormula !== true || !formulas.has(cell));
}

interface WriteProgress {
  /** its id, which stays when the sheet is renamed */
  sheet: string;
  before: readonly (readonly CellBefore[])[];
  /** runs that were handed to Excel, whose last request may have been carried out in part */
  sent: number;
}

function halfWritten(
  { sheet, before, sent }: WriteProgress,
  runs: readonly Run[],
  problem: unknown,
): unknown {
  if (sent === 0 || !(problem instanceof Error)) return problem;
  const sentRuns = runs.slice(0, sent);
  const written = sentRuns.flatMap(({ edits }) =>
    edits.map(({ row, column, to }) => ({ cell: addressAt(row, column), to })),
  );
  const undo = () => takeBack(sheet, sentRuns, before.slice(0, sent), true);
  return new PartlyWritten(problem.message, written, undo, { cause: problem });
}

function placed(edit: CellEdit): PlacedEdit {
  const place = parseAddress(edit.cell);
  if (place === null) {
    throw new WorkbookRefusal(`${edit.cell} is no address of a cell, such as F12: nothing was written`);
  }
  return { ...place, to: edit.to ?? "" };
}

function runsOf(edits: readonly PlacedEdit[]): Run[] {
  const runs: Run[] = [];
  const sorted = [...edits].sort((one, other) => one.column - other.column || one.row - other.row);
  for (const edit of sorted) {
    const last = runs.at(-1);
    const follows = last?.column === edit.column && last.row + last.edits.length === edit.row;
    if (last !== undefined && follows) last.edits.push(edit);
    else runs.push({ row: edit.row, column: edit.column, edits: [edit] });
  }
  return runs.flatMap(parted);
}

/** A run no longer than one request may carry. */
function parted(run: Run): Run[] {
  const parts: Run[] = [];
  for (let from = 0; from < run.edits.length; from += CELLS_PER_REQUEST) {
    const edits = run.edits.slice(from, from + CELLS_PER_REQUEST);
    parts.push({ row: run.row + from, column: run.column, edits });
  }
  return parts;
}

async function look(
  context: Excel.RequestContext,
  name: string,
  runs: readonly Run[],
): Promise<Pick<WriteProgress, "sheet" | "before">> {
  const sheet = context.workbook.worksheets.getItem(name).load("id");
  sheet.protection.load("protected");
  const ranges = runs.map((run) =>
    rangeOf(sheet, run).load("formulas,numberFormat,format/protection/locked"),
  );
  await context.sync();
  if (sheet.protection.protected && ranges.some((range) => range.format.protection.locked !== false)) {
    throw new WorkbookRefusal(
      `sheet ${name} is protected, so nothing was written: take off the protection (Review, Unprotect Sheet) or work on a copy`,
    );
  }
  const before = runs.map((run, index) =>
    run.edits.map((edit, row) => ({
      row: edit.row,
      column: edit.column,
      content: ranges[index]?.formulas[row]?.[0] ?? "",
      format: ranges[index]?.numberFormat[row]?.[0] ?? "General",
      written: edit.to,
    })),
  );
  return { sheet: sheet.id, before };
}

async function write(
  context: Excel.RequestContext,
  runs: readonly Run[],
  progress: WriteProgress,
): Promise<void> {
  const { sheet, before } = progress;
  const sending = (sent: number): void => {
    progress.sent = sent;
  };
  await inChunks(context, runs, sending, (run, index) => {
    const range = rangeOf(context.workbook.worksheets.getItem(sheet), run);
    const formats = run.edits.map((edit, row) => {
      const isText = typeof edit.to === "string" && changesWhenTyped(edit.to);
      return [isText && before[index]?.[row]?.format !== TEXT_FORMAT ? TEXT_FORMAT : null];
    });
    if (formats.some(([format]) => format !== null)) range.numberFormat = formats;
    range.values = run.edits.map((edit) => [edit.to]);
  });
}

/** @param isDoubtful some of the cells may hold still what they held before */
async function takeBack(
  name: string,
  runs: readonly Run[],
  before: readonly (readonly CellBefore[])[],
  isDoubtful: boolean,
): Promise<boolean> {
  return runBatch(
    async (context) => {
      const sheet = context.workbook.worksheets.getItem(name);
      const ranges = runs.map((run) => rangeOf(sheet, run).load("values,formulas"));
      await context.sync();
      const isOurs = before.every((cells, index) =>
        cells.every((cell, row) => {
          if (String(ranges[index]?.values[row]?.[0]) === String(cell.written)) return true;
          return isDoubtful && String(ranges[index]?.formulas[row]?.[0]) === String(cell.content);
        }),
      );
      if (!isOurs) return false;
      await inChunks(context, runs, null, (run, index) => {
        const cells = before[index] ?? [];
        const range = rangeOf(context.workbook.worksheets.getItem(name), run);
        range.numberFormat = cells.map((cell) => [cell.format]);
        range.formulas = cells.map((cell) => [typedAgain(cell)]);
      });
      return true;
    },
    { oneUndoStep: true, sheet: name },
  );
}

/** A text kept as text by an apostrophe needs it again; one in a text cell does not. */
function typedAgain(cell: CellBefore): CellBefore["content"] {
  const { content, format } = cell;
  const isPlainText = typeof content === "string" && !content.startsWith("=") && !content.startsWith("'");
  return isPlainText && format !== TEXT_FORMAT && changesWhenTyped(content) ? `'${content}` : content;
}

async function inChunks(
  context: Excel.RequestContext,
  runs: readonly Run[],
  sending: ((runs: number) => void) | null,
  put: (run: Run, index: number) => void,
): Promise<void> {
  let cells = 0;
  let characters = 0;
  for (const [index, run] of runs.entries()) {
    const size = run.edits.reduce((sum, edit) => sum + String(edit.to).length + 8, 400);
    if (
      cells > 0 &&
      (cells + run.edits.length > CELLS_PER_REQUEST || characters + size > CHARACTERS_PER_REQUEST)
    ) {
      sending?.(index);
      await context.sync();
      cells = 0;
      characters = 0;
    }
    if (cells === 0) {
      context.application.suspendApiCalculationUntilNextSync();
      context.application.suspendScreenUpdatingUntilNextSync();
    }
    put(run, index);
    cells += run.edits.length;
    characters += size;
  }
  sending?.(runs.length);
  await context.sync();
}

function rangeOf(sheet: Excel.Worksheet, run: Run): Excel.Range {
  return sheet.getRangeByIndexes(run.row, run.column, run.edits.length, 1).untrack();
}
