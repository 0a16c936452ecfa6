import { BarFacts } from "../bar/bar-facts";
import { barLength } from "../bar/bar-length";
import { shapeRefused } from "../bar/shape-refused";
import { SheetFacts } from "../bar/sheet-facts";
import type { BarRow, CellProblem, ColumnKind, ScheduleReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import { isCellError, type Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { counted } from "../units/counted";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import type { CutRow, RefusedRow } from "./cut-row";

const cellUnread = defineRefusal("cut-cell-unread", "value", "{reason}; correct the cell");
const sizeNotMade = defineRefusal(
  "cut-size-not-made",
  "not-held",
  'size "{typed}" is no bar of {standard}: correct the size',
);
const lengthVaries = defineRefusal(
  "cut-length-varies",
  "value",
  "its length varies and a plan needs each one: write a row for each length",
);
const noLength = defineRefusal(
  "cut-length-missing",
  "value",
  "no cut length: none is written, and shape and dimensions give none",
);
const noCount = defineRefusal("cut-count-missing", "value", "no count: write how many bars");

/** What a schedule asks to be cut, and each bar row that asks for nothing that could be cut. */
export interface RowsToCut {
  readonly rows: readonly CutRow[];
  readonly refused: readonly RefusedRow[];
  readonly notes: readonly string[];
}

/**
 * Pieces of a schedule, row by row: the typed length, else the cut length of the shape. A row whose size,
 * length or count was written and could not be read is refused with its cell; an error of a formula is as
 * good as blank. Guesses of the reader are told.
 */
export function rowsToCut(sheet: Sheet, reading: ScheduleReading, standard: Standard): RowsToCut {
  const sheetFacts = new SheetFacts(sheet, reading);
  const rows: CutRow[] = [];
  const refused: RefusedRow[] = [];
  const dropped: string[] = [];
  const without: string[] = [];
  const computed: string[] = [];
  const guessed: string[] = [];
  const hidden: string[] = [];
  const byTotal: string[] = [];
  for (const bar of reading.bars) {
    const facts = new BarFacts(bar, sheetFacts, standard);
    const at = (kind: ColumnKind): string => cellOf(sheet, bar, kind);
    if (bar.struckThrough || bar.superseded === true) {
      dropped.push(at("mark"));
      continue;
    }
    const { count } = facts;
    const toCut = barLength(facts, "to cut");
    const length = isRefusal(toCut) ? null : toCut.length;
    const row = { size: facts.sizeName, grade: bar.grade, mark: bar.mark, sheet: sheet.name };
    const fault = rowFault(facts, standard, toCut);
    if (fault !== null || length === null || count === null) {
      const { field, reason } = fault ?? { field: "length", reason: noLength({}) };
      refused.push({ ...row, cell: at(field), length, count, longestStock: null, reason });
    } else if (count === 0) without.push(at("total"));
    else {
      const refused = shapeRefused(facts);
      const unmade = refused?.isCertain === true ? { unmade: refused.why } : {};
      const { size, grade, mark } = row;
      const [cell, line] = [at("length"), sheet.top + bar.row + 1];
      rows.push({ size, grade, mark, sheet: sheet.name, cell, row: line, length, count, ...unmade });
      if (bar.hidden) hidden.push(at("length"));
      if (bar.total !== null && isOtherThanMembers(bar)) byTotal.push(at("total"));
      if (bar.length === null && isCellError(facts.typed("length"))) computed.push(at("length"));
    }
    for (const problem of guesses(bar)) guessed.push(`${at(problem.field)}: ${problem.reason}`);
  }
  const notes = [
    placesSaid(dropped, "struck through or superseded, not in the plan"),
    placesSaid(without, "with a count of 0, which asks for nothing"),
    placesSaid(hidden, "in hidden rows, planned all the same"),
    placesSaid(byTotal, "planned by the total as typed, which is not members times each"),
    placesSaid(computed, "whose length cell shows an error, planned by shape and dimensions"),
    ...guessed.slice(0, MOST_GUESSES),
    guessed.length > MOST_GUESSES
      ? `${counted(guessed.length - MOST_GUESSES, "more cell")} read by a guess`
      : "",
  ];
  return { rows, refused, notes: notes.filter((note) => note !== "") };
}

const MOST_GUESSES = 5;
const MOST_CELLS = 8;

/** The first thing that keeps the row out of a plan, with the cell that says so. */
function rowFault(
  facts: BarFacts,
  standard: Standard,
  toCut: ReturnType<typeof barLength>,
): { field: ColumnKind; reason: Refusal } | null {
  const { row } = facts;
  const ofSize = sizeRefusal(facts, standard);
  if (ofSize !== null) return { field: "size", reason: ofSize };
  const countFields: readonly ColumnKind[] = row.total === null ? ["total", "members", "each"] : ["total"];
  const unread = (row.problems ?? []).find(
    (problem) =>
      (problem.outcome === "unread" || problem.asks === true) &&
      !isCellError(problem.typed) &&
      (problem.field === "length" || countFields.includes(problem.field)),
  );
  if (unread !== undefined) return { field: unread.field, reason: cellUnread({ reason: unread.reason }) };
  if (row.varying != null) return { field: row.varying.field, reason: lengthVaries({}) };
  if (isRefusal(toCut)) return { field: "length", reason: toCut };
  if (facts.count === null) return { field: "total", reason: noCount({}) };
  return null;
}

/** Why nothing is cut of a row's size; null where it is a bar of the standard. */
export function sizeRefusal({ row, sizeName }: BarFacts, standard: Standard): Refusal | null {
  if (row.size?.bar != null) return null;
  const read = standard.readSize(sizeName);
  return isRefusal(read) ? read : sizeNotMade({ typed: sizeName, standard: standard.id });
}

function isOtherThanMembers({ members, each, total }: BarRow): boolean {
  return members !== null && each !== null && members * each !== total;
}

/** Guesses that a length or a count rests on. */
function guesses(bar: BarRow): CellProblem[] {
  return (bar.problems ?? []).filter(
    ({ outcome, asks, field }) =>
      outcome === "guessed" && asks !== true && ["length", "total", "members", "each"].includes(field),
  );
}

/** Address of the column where the table has it, else of the mark or the row's first known cell. */
function cellOf(sheet: Sheet, { table, row }: BarRow, kind: ColumnKind): string {
  const { columns } = table;
  const found =
    columns.get(kind) ?? columns.get("each") ?? columns.get("mark") ?? columns.values().next().value;
  return cellAddress(sheet, row, found?.column ?? 0);
}

function placesSaid(cells: readonly string[], what: string): string {
  if (cells.length === 0) return "";
  const more = cells.length > MOST_CELLS ? ` and ${cells.length - MOST_CELLS} more` : "";
  return `${counted(cells.length, "row")} ${what}: ${cells.slice(0, MOST_CELLS).join(", ")}${more}`;
}
