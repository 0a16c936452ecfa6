import type { SizeReading } from "../../standards/port";
import type { BarRow, CellProblem, ColumnKind, GuessCode } from "../bar-row";
import type { Cell } from "../sheet";

/** What the answer of a cell may rest on beyond the cell itself. */
export interface RowContext {
  readonly row: number;
  /** the bar above, for ditto marks */
  readonly above: BarRow | null;
  /** the bars of this row, as far as they are known */
  readonly count: number | null;
  /** the day, as "2030-05-31", where the cell of this row shows its number as a date; null elsewhere */
  dayAt(column: number, serial: number): string | null;
  isConfirmed(code: string, row: number, column: number): boolean;
  /** the bar of a mark read before, for "same as B1" */
  barOfMark(mark: string): BarRow | null;
}

/** A value and what is to be told of the cell that it came from. */
export interface Answer<T> {
  readonly value: T | null;
  readonly problem: CellProblem | null;
}

/** An answer of which something is to be told. */
export interface Told<T> extends Answer<T> {
  readonly problem: CellProblem;
}

/** Which cell is answered for. */
export interface CellPlace {
  readonly field: ColumnKind;
  readonly column: number;
  readonly typed: Cell;
}

export interface Guess {
  readonly guess: GuessCode;
  readonly asks: boolean;
  readonly reason: string;
  readonly proposal?: string | number;
}

/** The answer of a cell that could not be read. */
export function unread(place: CellPlace, reason: string): Told<never> {
  const { field, column, typed } = place;
  return { value: null, problem: { field, column, typed, outcome: "unread", reason } };
}

/** A guessed value: null while the user is asked and has not confirmed it. */
export function guessed<T>(place: CellPlace, value: T | null, said: Guess, context: RowContext): Told<T> {
  const { field, column, typed } = place;
  const { guess, asks, reason, proposal } = said;
  const base = { field, column, typed, outcome: "guessed" as const, guess };
  if (asks && context.isConfirmed(guess, context.row, column)) {
    return { value, problem: { ...base, reason: `${reason} (confirmed)` } };
  }
  const offered = proposal === undefined ? {} : { proposal };
  const problem = { ...base, reason, ...(asks ? { asks } : {}), ...offered };
  return { value: asks ? null : value, problem };
}

/** The field of the row that a mark names: a guess that is asked. */
export function sameAsMark<T extends string | number | SizeReading>(
  place: CellPlace,
  mark: string | null,
  pick: (bar: BarRow) => T | null,
  context: RowContext,
): Told<T> {
  const bar = mark === null ? null : context.barOfMark(mark);
  const found = bar === null ? null : pick(bar);
  if (found === null) {
    const reason = `it refers to "${mark ?? ""}", and no mark above is called so: write the value itself`;
    return unread(place, reason);
  }
  const proposal: string | number = typeof found === "object" ? found.typed : found;
  const reason = `it refers to mark "${mark}", which has ${proposal}`;
  return guessed(place, found, { guess: "same-as", asks: true, reason, proposal }, context);
}
