import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import type { BarRow, CellProblem, VaryingSet } from "../bar-row";
import { columnLetters } from "../cell-address";
import type { Answer, RowContext } from "../cells/cell-answer";
import { dayAt } from "../cells/date-typed";
import type { LengthField } from "../cells/length-field";
import type { LengthAnswer } from "../cells/read-length-cell";
import type { UnitError } from "../cells/settle-unit-errors";
import type { TableLayout } from "../columns/decide-columns";
import type { Cell, Sheet } from "../sheet";
import { barBeside } from "./bar-beside";
import type { RowSigns } from "./row-signs";

/** A bar row while its sheet is being read: later rows and the notes may still add to it. */
export type DraftRow = { -readonly [K in keyof BarRow]: BarRow[K] };

/** What the readers of a row's cells ask beyond the row. */
export interface RowSource {
  isConfirmed(code: string, row: number, column: number): boolean;
  barOfMark(mark: string): BarRow | null;
  /** no other table stands right of the one with this layout */
  isRightmost?(layout: object): boolean;
}

/** Takes the answers of one row's cells: values on, problems kept. */
export class RowDraft implements RowContext {
  problems: CellProblem[] | null = null;
  varying: VaryingSet | null = null;
  lap: number | null = null;
  free = "";
  radius: number | null = null;
  unitErrors: UnitError[] | null = null;
  members: number | null = null;
  /** members that the row itself gives, for the rows below */
  membersTyped: number | null = null;
  each: number | null = null;
  total: number | null = null;

  row = 0;
  above: BarRow | null = null;

  constructor(
    private readonly source: RowSource,
    private readonly sheet: Sheet,
  ) {}

  /** Forgets the row before. */
  begin(row: number, above: BarRow | null): void {
    this.row = row;
    this.above = above;
    this.problems = null;
    this.varying = null;
    this.lap = null;
    this.free = "";
    this.radius = null;
    this.unitErrors = null;
  }

  get count(): number | null {
    return this.each ?? this.total;
  }

  dayAt(column: number, serial: number): string | null {
    return dayAt(this.sheet, this.row, column, serial);
  }

  isConfirmed(code: string, row: number, column: number): boolean {
    return this.source.isConfirmed(code, row, column);
  }

  barOfMark(mark: string): BarRow | null {
    return this.source.barOfMark(mark);
  }

  /** Another bar behind the table's last column, which nobody would read. */
  tellOfBeside(cells: readonly Cell[], left: number, layout: TableLayout, signs: RowSigns): void {
    const first = barBeside(cells, layout, signs);
    if (first < 0 || this.source.isRightmost?.(layout) === false) return;
    const reason = `what stands from column ${columnLetters(left + first)} on is as much as a bar has, beside the columns of the table, and was not read: move it into a row of its own`;
    this.tell({ field: "mark", column: first, typed: null, outcome: "unread", reason });
  }

  tell(problem: CellProblem | null): void {
    if (problem === null) return;
    this.problems ??= [];
    this.problems.push(problem);
  }

  take<T>({ value, problem }: Answer<T>): T | null {
    this.tell(problem);
    return value;
  }

  /** For answers that are mostly bare. */
  takeBare<T extends string | number>(answer: T | null | Answer<T>): T | null {
    return typeof answer === "object" && answer !== null ? this.take(answer) : answer;
  }

  takeLength(answer: LengthAnswer, { place }: LengthField): number | null {
    if (typeof answer !== "object" || answer === null) return answer;
    this.tell(answer.problem);
    if (answer.free === true && place >= 0) this.free += DIMENSION_LETTERS[place];
    if (answer.lap !== undefined && answer.lap !== null) this.lap = answer.lap;
    if (answer.varying !== undefined) this.varying = answer.varying;
    if (answer.unitError !== undefined) {
      this.unitErrors ??= [];
      this.unitErrors.push(answer.unitError);
    }
    if (answer.radius !== true || place < 0) return answer.value;
    this.radius = answer.value;
    return null;
  }
}

/** The last bar so far of a mark, whatever its case; null where there is none. */
export function lastOfMark(bars: readonly DraftRow[], mark: string): DraftRow | null {
  const sought = mark.toUpperCase();
  for (let index = bars.length - 1; index >= 0; index -= 1) {
    const bar = bars[index] as DraftRow;
    if (bar.mark?.toUpperCase() === sought) return bar;
  }
  return null;
}
