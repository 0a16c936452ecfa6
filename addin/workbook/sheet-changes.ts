import type { Cell } from "../../core/schedule/sheet";
import type { FlagSeverity } from "./flag-colours";
import type { LookChange } from "./look-change";

/** A value to be written into a cell, with the formula that gives it where it has one. */
export interface CellWrite {
  readonly value: Cell;
  /** as typed, without the equals sign */
  readonly formula?: string;
  /** rows and columns that the formula's result fills */
  readonly fills?: { readonly rows: number; readonly columns: number };
  /** takes the place of a formula that fills a range, all of whose cells are written */
  readonly endsFormula?: true;
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

/** What is to become of a row or a column; what is not named stays. */
export interface LineChange {
  /** points for a row, characters for a column; null is the sheet's own */
  readonly size?: number | null;
  readonly hidden?: boolean;
  /** look of its cells that hold nothing yet */
  readonly look?: LookChange;
}

export interface CellRange {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** Rows that are shown by what stands in their columns. */
export interface SheetFilter {
  readonly range: CellRange;
  readonly columns: readonly FilteredColumn[];
}

export interface FilteredColumn {
  /** from the range's first column */
  readonly column: number;
  /** values that are shown */
  readonly values?: readonly string[];
  readonly blank?: boolean;
  /** comparisons, joined by and or or */
  readonly custom?: { readonly and: boolean; readonly tests: readonly FilterTest[] };
}

export interface FilterTest {
  readonly value: string;
  /** "greaterThan" and so on; equal where it is not named */
  readonly operator?: string;
}

/** What is to become of one sheet. What is not named stays as it is. */
export interface SheetChanges {
  readonly writes?: readonly (CellWrite & { readonly row: number; readonly column: number })[];
  /** formulas whose stored result holds no longer and is taken out */
  readonly stale?: readonly { readonly row: number; readonly column: number }[];
  readonly flags?: readonly FlagBand[];
  readonly notes?: readonly CellNote[];
  readonly looks?: readonly { readonly row: number; readonly column: number; readonly change: LookChange }[];
  /** by row */
  readonly rows?: ReadonlyMap<number, LineChange>;
  /** by column */
  readonly columns?: ReadonlyMap<number, LineChange>;
  /** all merged cells of the sheet */
  readonly merges?: readonly CellRange[];
  /** rows above and columns left of the cells that stay in sight */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  /** the filter of the sheet, as the part writes it; null takes it away */
  readonly filter?: SheetFilter | null;
  /** takes off flags and notes of an earlier check first */
  readonly clear?: boolean;
}
