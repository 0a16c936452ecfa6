import type { Machine } from "../bending/machine";
import type { Cell } from "../schedule/sheet";
import type { OwnStandard } from "../standards/own-standard";

/** A block of cells, rows of equal width; a single cell is a block of one. */
export type Block = readonly (readonly Cell[])[];

/** What a function may ask of the place it runs in. */
export interface FunctionEnvironment {
  /** id of the standard where none is given: the workbook's `Barwright.Standard`, else BS8666:2005 */
  readonly defaultStandard: string;
  /** what the workbook's sheet Standard says, where the place has read it */
  readonly own?: OwnStandard;
  /** benders of the workbook's Shop sheet, where the place has read it */
  readonly machines?: readonly Machine[];
  /** the table of rates of the workbook's Shop sheet with its header row, where the place has read it */
  readonly rates?: Block;
}

export interface FunctionArgument {
  readonly name: string;
  readonly description: string;
  readonly optional: boolean;
  /** `column` lifts over rows, `dims` is a block a row wide, `table` is taken whole */
  readonly lifts: "column" | "dims" | "table";
}

/**
 * A function of namespace BAR, free of any host. Results are blocks; a refusal is a cell error of
 * `#VALUE!` or `#N/A` with its message, in its own row.
 */
export interface WorksheetFunction {
  /** "DEVELOPED", without the namespace */
  readonly name: string;
  readonly description: string;
  readonly args: readonly FunctionArgument[];
  call(args: readonly (Block | undefined)[], environment: FunctionEnvironment): Block;
  /** the unit of mass that its numbers are in; left out where they are no masses */
  massUnit?(args: readonly (Block | undefined)[]): string;
}
