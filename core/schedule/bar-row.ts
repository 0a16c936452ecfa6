import type { SizeReading } from "../standards/port";
import type { ColumnKind } from "./column-kind";
import type { ColumnUnit } from "./column-unit";
import type { TableProof } from "./columns/table-proof";
import type { RowReason } from "./rows/row-reason";
import type { Cell } from "./sheet";

export type { ColumnKind, ColumnUnit };

export type RowClass = "bar" | "heading" | "total" | "note" | "blank" | "unread";

/** What the unit of a column rests on; `middle` is the middle value of its numbers. */
export interface UnitReason {
  readonly code:
    | "written"
    | "standard"
    | "magnitude"
    | "dimensions"
    | "against-header"
    | "arithmetic"
    | "user";
  readonly middle?: number;
}

export interface ColumnReading {
  readonly kind: ColumnKind;
  /** within the used range, from 0 */
  readonly column: number;
  /** the header's own words */
  readonly header: string;
  /** unit that the column's numbers were taken in; null for texts and counts */
  readonly unit: ColumnUnit | null;
  /** said where it was decided without the header's own word */
  readonly guess: string | null;
  /** what decided its kind; where arithmetic decided only its unit, that too */
  readonly by: "words" | "arithmetic" | "user";
  /** null for texts and counts */
  readonly unitBy: UnitReason | null;
  /** The user's own correction, kept in the workbook, decided it. */
  readonly corrected?: boolean;
  readonly hidden?: boolean;
  /** the column beside it that holds the inches of a length in feet */
  readonly inches?: number;
}

/** One schedule on a sheet: a header and the bar rows under it. */
export interface TableReading {
  readonly headerTop: number;
  readonly headerBottom: number;
  readonly columns: ReadonlyMap<ColumnKind, ColumnReading>;
  /** columns that belong to this schedule, where several stand side by side */
  readonly left?: number;
  readonly right?: number;
  /** columns of lengths or masses by bar size, as some practices write them */
  readonly bySize?: readonly { readonly size: string; readonly column: number }[];
  /** what those columns hold of a row, as most rows show; left out where they do not */
  readonly bySizeUnit?: ColumnUnit;
  /** header cells of this schedule that no known word covers */
  readonly unknownHeaders?: readonly { readonly column: number; readonly header: string }[];
}

/** What a guess rests on; a user confirms a guess by this code or by the cell. */
export type GuessCode =
  | "unit-of-column"
  | "unit-of-cell"
  | "decimal-comma"
  | "date-was-fraction"
  | "date-was-mark"
  | "number-was-mark"
  | "lookalike-digit"
  | "size-from-symbol"
  | "size-prefix"
  | "size-from-mass"
  | "size-from-column"
  | "size-not-made"
  | "feet-or-inches"
  | "members-of-one"
  | "members-carried"
  | "count-of-member"
  | "set-or-pair"
  | "same-as"
  | "shape-digits"
  | "shape-from-legs"
  | "negative-dimension"
  | "free-by-format"
  | "varying-mean"
  | "sum-of-parts"
  | "each-face"
  | "hidden-rows"
  | "hidden-columns"
  | "coloured-rows"
  | "struck-rows"
  | "member-from-sheet"
  | "grade-from-note"
  | "stored-corrections"
  | "list-goes-on"
  | "column-by-arithmetic"
  | "unit-by-arithmetic"
  | "words-contradicted"
  | "amounts-of-member"
  | "nothing-confirms"
  | "totals-held";

/** A cell of a bar row that could not be read, or was read by a guess. */
export interface CellProblem {
  readonly field: ColumnKind;
  readonly column: number;
  readonly typed: Cell;
  readonly outcome: "unread" | "guessed";
  readonly reason: string;
  /** A guess that moves steel by more than 1 % or changes a shape: not used until confirmed. */
  readonly asks?: boolean;
  readonly guess?: GuessCode;
  /** what the cell would be read as */
  readonly proposal?: string | number;
}

/** A guess about the whole sheet or a column. */
export interface SheetGuess {
  readonly guess: GuessCode;
  readonly reason: string;
  readonly asks: boolean;
  /** within the used range; null where it is about no one place */
  readonly row: number | null;
  readonly column: number | null;
  /** the correction that reads the column the other way */
  readonly otherwise?: { readonly column: number; readonly kind: string; readonly unit: ColumnUnit | null };
}

/** A set of bars of which one length varies evenly: `1200-1800 step 50`. mm. */
export interface VaryingSet {
  readonly field: ColumnKind;
  readonly from: number | null;
  readonly to: number | null;
  readonly step: number | null;
  /** lengths in the set by from, to and step; null where no step is given */
  readonly lengths: number | null;
}

/** What a remark says of place and hand, in the words of the trade. */
export interface RemarkReading {
  /** "T1", "B2", "EF" */
  readonly layers: readonly string[];
  readonly hand: "left" | "right" | "opposite" | null;
  readonly alternate: boolean;
  readonly stagger: boolean;
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
  /** the drawing that the row names, where a column of the list does */
  readonly drawing?: string | null;
  /** kg/m as typed */
  readonly unitMass?: number | null;
  /** kg of one bar, as typed */
  readonly pieceMass?: number | null;
  /** mm, count times length as typed */
  readonly totalLength?: number | null;
  /** the column by size that holds the row's total length or mass, where no column of that name does */
  readonly sizedAt?: number | null;
  /** mm between bars, typed or out of a call-off */
  readonly spacing?: number | null;
  readonly varying?: VaryingSet | null;
  /** mark of the set that 12a, 12b belong to: "12" */
  readonly setMark?: string | null;
  /** leg lengths written in the shape cell, mm, in order */
  readonly legs?: readonly number[] | null;
  /** mm of lap that the length includes */
  readonly lap?: number | null;
  readonly remarks?: RemarkReading | null;
  /** A later revision of the bar stands in the workbook, or the row says so itself: it counts nowhere. */
  readonly superseded?: boolean;
  /** what replaces it; null where its own remark says so */
  readonly supersededBy?: SupersededBy | null;
  readonly fill?: string | null;
}

/** The later revision that a bar gives way to. */
export interface SupersededBy {
  readonly revision: string;
  /** null where it stands on the same sheet */
  readonly sheet: string | null;
}

/** A line of the schedule that sums, kept to be checked against the bars. */
export interface TotalRow {
  readonly row: number;
  readonly label: string;
  readonly cells: readonly { readonly column: number; readonly value: number }[];
  readonly kind?: "total" | "subtotal" | "carried" | "summary";
  readonly table?: TableReading;
}

/** A block of masses or lengths by size under or beside a list. */
export interface SummaryBlock {
  readonly headerRow: number;
  readonly rows: readonly TotalRow[];
  /** empty where the sizes stand one below another */
  readonly sizes: readonly { readonly size: string; readonly column: number }[];
  /** first column of a block beside the list, which sums all of it */
  readonly left?: number;
}

/** Why the totals of a sheet are held back until its user says how it is to be read. */
export interface HeldTotals {
  readonly why: "nothing-agrees" | "units-disagree" | "exchangeable" | "members-unsaid";
  /** of the header whose table it is, within the used range */
  readonly row: number;
  readonly columns: readonly number[];
  readonly reason: string;
}

/** Everything the reader made of one sheet. */
export interface ScheduleReading {
  readonly sheet: string;
  readonly tables: readonly TableReading[];
  /** how the rows of each table agree with the reading of its columns; null where too few rows hold values */
  readonly proofs: readonly (TableProof | null)[];
  /** class of every row of the used range, once */
  readonly rowClasses: readonly RowClass[];
  /** what made each row what it was taken for, by row */
  readonly rowReasons: readonly RowReason[];
  readonly bars: readonly BarRow[];
  readonly totals: readonly TotalRow[];
  /** Where no header was found: the words looked for and the nearest row. */
  readonly noHeader: {
    readonly lookedFor: readonly string[];
    readonly nearestRow: number | null;
    /** bars stand in columns and not in rows */
    readonly isTransposed: boolean;
  } | null;
  /** guesses about the sheet or a column, each shown to the user */
  readonly guesses?: readonly SheetGuess[];
  readonly summaries?: readonly SummaryBlock[];
  /** drawing, revision, job and the like out of the title block and the foot */
  readonly titleFacts?: ReadonlyMap<string, string>;
  /** mm: the step that nearly all typed lengths keep */
  readonly lengthStep?: number | null;
  /** why totals wait for the user, or null */
  readonly held: HeldTotals | null;
  /** Every row came as one text in one cell and was split at its wide gaps. */
  readonly pasted?: boolean;
}
