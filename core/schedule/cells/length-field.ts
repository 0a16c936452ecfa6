import type { ColumnKind } from "../bar-row";
import type { LengthColumn, LengthReading } from "./read-length-text";

/** A column of lengths. */
export interface LengthField {
  readonly kind: ColumnKind;
  readonly column: number;
  /** place among the dimensions; -1 for other lengths */
  readonly place: number;
  readonly how: LengthColumn;
  /** numbers between these are taken as they stand */
  readonly least: number;
  readonly most: number;
  /** where the inches of a length in feet stand; -1 where they do not stand apart */
  readonly inches: number;
  /** the standard measures in inches */
  readonly inInches: boolean;
  /** the column's unit waits for the user: what is asked */
  readonly asks: string | null;
  readText(typed: string): LengthReading;
}
