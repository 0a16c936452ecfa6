import type { Cell } from "../../core/schedule/sheet";
import type { FlagSeverity } from "./flag-colours";
import type { StackedBars } from "./stacked-bars";

/** A cell of a sheet that is added to a workbook. */
export interface AddedCell<Value extends Cell = Cell> {
  readonly value: Value;
  /** as typed, without the equals sign; `value` is its result as stored */
  readonly formula?: string;
  /** rows and columns that the formula's result fills */
  readonly fills?: { readonly rows: number; readonly columns: number };
  readonly bold?: boolean;
  readonly wrap?: boolean;
  readonly flag?: FlagSeverity;
  /** a heading's grey */
  readonly shade?: boolean;
  /** with a thin line under it */
  readonly ruled?: boolean;
  /** at the right edge, as a number is */
  readonly right?: boolean;
  /** "0.000" */
  readonly format?: string;
  /** place in the same workbook to jump to; a null sheet is the one that the cell stands on */
  readonly link?: { readonly sheet: string | null; readonly cell: string };
}

/** How a sheet is printed: on its side, as wide as the paper. */
export interface PrintSetUp {
  /** US Letter; else A4 */
  readonly isLetter: boolean;
  /** rows repeated on every page */
  readonly titleRows: number;
  /** ranges such as "A1:G9", each on pages of its own */
  readonly areas: readonly string[];
  /** row that begins a page, from 0 */
  readonly breakBefore?: number;
}

/** A sheet to be put behind a workbook's own. */
export interface AddedSheet<Value extends Cell = Cell> {
  /** made distinct where the workbook has a sheet of that name */
  readonly name: string;
  /** characters, by column */
  readonly widths: readonly number[];
  readonly frozenRows: number;
  readonly rows: readonly (readonly AddedCell<Value>[])[];
  readonly chart?: StackedBars;
  readonly print?: PrintSetUp;
}
