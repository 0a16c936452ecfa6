import type { Cell } from "../../core/schedule/sheet";
import type { FlagSeverity } from "./flag-colours";

/** A value to be written into a cell, with the formula that gives it where it has one. */
export interface CellWrite {
  readonly value: Cell;
  /** as typed, without the equals sign */
  readonly formula?: string;
  /** rows and columns that the formula's result fills */
  readonly fills?: { readonly rows: number; readonly columns: number };
}

/** A band of cells in one row to be coloured; rows and columns are the sheet's, from 0. */
export interface FlagBand {
  readonly row: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
  readonly colour: FlagSeverity;
}

export interface CellNote {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** What is to become of one sheet. What is not named stays as it is. */
export interface SheetChanges {
  readonly writes?: readonly (CellWrite & { readonly row: number; readonly column: number })[];
  readonly flags?: readonly FlagBand[];
  readonly notes?: readonly CellNote[];
  /** takes off flags and notes of an earlier check first */
  readonly clear?: boolean;
}
