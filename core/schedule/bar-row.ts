import type { DimLetter, SizeReading } from "../standards/port";
import type { Cell } from "./sheet";

/** What a column of a schedule can be. */
export type ColumnKind =
  | "member"
  | "mark"
  | "size"
  | "grade"
  | "members"
  | "each"
  | "total"
  | "length"
  | "shape"
  | DimLetter
  | "mass"
  | "unitMass"
  | "totalLength"
  | "spacing"
  | "former"
  | "coating"
  | "pour"
  | "revision"
  | "released"
  | "remark";

export type RowClass = "bar" | "heading" | "total" | "note" | "blank" | "unread";

export interface ColumnReading {
  readonly kind: ColumnKind;
  /** within the used range, from 0 */
  readonly column: number;
  /** the header's own words */
  readonly header: string;
  /** unit that the column's numbers were taken in; null for texts and counts */
  readonly unit: "mm" | "cm" | "m" | "in" | "ft" | "kg" | "t" | "lb" | null;
  /** said where it was decided without the header's own word */
  readonly guess: string | null;
}

/** One schedule on a sheet: a header and the bar rows under it. */
export interface TableReading {
  readonly headerTop: number;
  readonly headerBottom: number;
  readonly columns: ReadonlyMap<ColumnKind, ColumnReading>;
}

/** A cell of a bar row that could not be read, or was read by a guess. */
export interface CellProblem {
  readonly field: ColumnKind;
  readonly column: number;
  readonly typed: Cell;
  readonly outcome: "unread" | "guessed";
  readonly reason: string;
  /** A guess that moves steel by more than 1 % or changes a shape: not used until confirmed. */
  readonly asks?: boolean;
}

/** One bar row. Lengths are mm, masses kg; null is blank or unread (then a problem says so). */
export interface BarRow {
  readonly table: TableReading;
  /** row within the used range, from 0 */
  readonly row: number;
  readonly member: string | null;
  readonly mark: string | null;
  readonly sizeTyped: string | null;
  readonly size: SizeReading | null;
  readonly grade: string | null;
  readonly shape: string | null;
  /** by column: A is first; holes are null; no trailing nulls */
  readonly dims: readonly (number | null)[];
  readonly radius: number | null;
  /** letters written in parentheses */
  readonly freeDims: string;
  readonly members: number | null;
  readonly each: number | null;
  readonly total: number | null;
  readonly length: number | null;
  readonly mass: number | null;
  readonly former: number | null;
  readonly coating: string | null;
  readonly pour: string | null;
  readonly revision: string | null;
  readonly released: string | null;
  readonly remark: string | null;
  readonly hidden: boolean;
  readonly struckThrough: boolean;
  readonly problems: readonly CellProblem[] | null;
}

/** Everything the reader made of one sheet. */
export interface ScheduleReading {
  readonly sheet: string;
  readonly tables: readonly TableReading[];
  /** class of every row of the used range, once */
  readonly rowClasses: readonly RowClass[];
  /** reason for each `unread` row */
  readonly unreadReasons: ReadonlyMap<number, string>;
  readonly bars: readonly BarRow[];
  readonly totals: readonly TotalRow[];
  /** Where no header was found: the words looked for and the nearest row. */
  readonly noHeader: { readonly lookedFor: readonly string[]; readonly nearestRow: number | null } | null;
}

/** A total line of the schedule itself, kept to be checked against the bars. */
export interface TotalRow {
  readonly row: number;
  readonly label: string;
  readonly cells: readonly { readonly column: number; readonly value: number }[];
}
