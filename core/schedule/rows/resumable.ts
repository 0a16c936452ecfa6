import type { Standard } from "../../standards/port";
import type { SettledColumns } from "../columns/settle-columns";
import type { Sheet } from "../sheet";
import type { Carried } from "./carried";

/** What the columns of a table were taken for, and how to decide it again. */
export interface ColumnDecision {
  readonly settled: SettledColumns;
  readonly headerBottom: number;
  decide(changed: Sheet): SettledColumns;
  /** the words of the header mean what they did over the cells that now stand under it */
  isSameHeader(changed: Sheet): boolean;
}

/** What a reading leaves behind so that a few of its rows can be read again. */
export interface Resumable {
  readonly sheet: Sheet;
  readonly standard: Standard;
  readonly decision: ColumnDecision;
  /** what was carried down to each bar before it was read */
  readonly carriedTo: readonly Carried[];
  /** a note names the grade of bars that name none */
  readonly isGradeNoted: boolean;
  isConfirmed(code: string, row: number, column: number): boolean;
}
