import type { SizeReading } from "../../standards/port";
import type { BarRow, CellProblem, ColumnKind, GuessCode, VaryingSet } from "../bar-row";
import type { LengthField } from "../columns/table-columns";
import type { Cell } from "../sheet";

/** What the readers of a row's cells ask beyond the cells. */
export interface RowSource {
  isConfirmed(code: string, row: number, column: number): boolean;
  /** the bar of a mark read before, for "same as B1" */
  barOfMark(mark: string): BarRow | null;
}

export interface Guess {
  readonly guess: GuessCode;
  readonly asks: boolean;
  readonly reason: string;
  readonly proposal?: string | number;
}

/** A number that looks written in another unit than its column; the whole row settles it. */
export interface Slip {
  readonly field: LengthField;
  readonly typed: Cell;
  /** as typed */
  readonly number: number;
  /** mm, as it would be taken */
  readonly value: number;
  readonly place: number;
}

/** The row that is being read: its problems so far and what one cell tells another. */
export class RowInHand {
  row = 0;
  problems: CellProblem[] | null = null;
  varying: VaryingSet | null = null;
  lap: number | null = null;
  free = "";
  radius: number | null = null;
  slips: Slip[] | null = null;
  members: number | null = null;
  each: number | null = null;
  total: number | null = null;
  /** the row above, for ditto marks */
  previous: BarRow | null = null;

  constructor(private readonly source: RowSource) {}

  begin(row: number): void {
    this.row = row;
    this.problems = null;
    this.varying = null;
    this.lap = null;
    this.free = "";
    this.radius = null;
    this.slips = null;
  }

  unread(field: ColumnKind, column: number, typed: Cell, reason: string): void {
    this.add({ field, column, typed, outcome: "unread", reason });
  }

  isConfirmed(code: string, column: number): boolean {
    return this.source.isConfirmed(code, this.row, column);
  }

  /** Reports a guess; true where its value may be used. */
  mayUse(field: ColumnKind, column: number, typed: Cell, said: Guess): boolean {
    const { guess, asks, reason, proposal } = said;
    if (asks && this.isConfirmed(guess, column)) {
      this.add({ field, column, typed, outcome: "guessed", reason: `${reason} (confirmed)`, guess });
      return true;
    }
    const offered = proposal === undefined ? {} : { proposal };
    this.add({
      field,
      column,
      typed,
      outcome: "guessed",
      reason,
      guess,
      ...(asks ? { asks } : {}),
      ...offered,
    });
    return !asks;
  }

  /** The field of the row that a mark names: a guess that is asked. */
  sameAs<T extends string | number | SizeReading>(
    field: ColumnKind,
    column: number,
    typed: Cell,
    mark: string | null,
    pick: (bar: BarRow) => T | null,
  ): T | null {
    const bar = mark === null ? null : this.source.barOfMark(mark);
    const found = bar === null ? null : pick(bar);
    if (found === null) {
      this.unread(
        field,
        column,
        typed,
        `it refers to "${mark ?? ""}", and no mark above is called so: write the value itself`,
      );
      return null;
    }
    const proposal = typeof found === "object" ? found.typed : (found as string | number);
    const reason = `it refers to mark "${mark}", which has ${proposal}`;
    return this.mayUse(field, column, typed, { guess: "same-as", asks: true, reason, proposal })
      ? found
      : null;
  }

  private add(problem: CellProblem): void {
    this.problems ??= [];
    this.problems.push(problem);
  }
}
