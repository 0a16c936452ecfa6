import type { BarFacts } from "../bar/bar-facts";
import type { SummedField } from "./sum-lines";

/** What a typed sum may stand for: which bars, and what of each. */
export interface SumWay {
  readonly bars: readonly BarFacts[];
  readonly figure: SummedField;
  /** mm, kg or bars in one of the line's unit */
  readonly per: number;
  /** as a share of the sum: what is right all the same */
  readonly within: number;
  /** false where the bars are of all sizes */
  readonly isOfSize: boolean;
  takes(facts: BarFacts): boolean;
}

/** A typed sum that is not what it should be. */
export interface WrongSum {
  /** within the used range, from 0 */
  readonly row: number;
  readonly column: number;
  readonly typed: number;
  /** in the line's unit, the nearest first */
  readonly sums: readonly number[];
  /** none where it sums other lines */
  readonly ways: readonly SumWay[];
  /** the cells that it sums, of one that sums other sums */
  readonly parts?: readonly Place[];
}

/** A cell within the used range, from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}
