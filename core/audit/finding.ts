import type { Citation } from "../standards/citation";

/** In falling order; the meaning of each stands in docs/rules. */
export type Severity = "unsafe" | "unbendable" | "off-standard" | "doubtful" | "note";

export const SEVERITIES: readonly Severity[] = ["unsafe", "unbendable", "off-standard", "doubtful", "note"];

/**
 * `broken`: the rule is not met, for certain. `unsure`: perhaps not; it could not be judged, and the message
 * says why, or the source of the limit is not sure.
 */
export type Outcome = "broken" | "unsure";

/** `safe` only where no length, count or mass changes. */
export type FixSafety = "safe" | "needs-review";

export interface Fix {
  readonly label: string;
  readonly safety: FixSafety;
  readonly edits: readonly {
    readonly cell: string;
    readonly to: string | number | null;
    /** carried along with another edit: a formula in the cell follows by itself and is left alone */
    readonly keepsFormula?: true;
  }[];
}

export interface Finding {
  readonly code: string;
  readonly name: string;
  readonly severity: Severity;
  readonly outcome: Outcome;
  readonly sheet: string;
  /** the sheet's own row number, from 1; null for a sheet-wide finding */
  readonly row: number | null;
  /** address such as "F12"; null for a sheet-wide finding */
  readonly cell: string | null;
  readonly message: string;
  readonly fix: Fix | null;
  readonly cite: Citation | null;
  /** never stands behind another finding */
  readonly toldEach?: true;
  /** another row that it is as much about, and what is told on that row's ticket */
  readonly also?: { readonly row: number; readonly message: string };
  /** the sheet's own rows behind a finding that stands for several alike */
  readonly rows?: readonly number[];
  /** what stands behind it cell by cell, where the cells do not all say the same */
  readonly behind?: readonly {
    readonly row: number;
    readonly cell: string | null;
    readonly message: string;
  }[];
}

/** The sheet's own rows that a finding is about; none for one about the sheet as a whole. */
export function rowsBehind({ row, rows }: Pick<Finding, "row" | "rows">): readonly number[] {
  return rows ?? (row === null ? [] : [row]);
}
