import type { Severity } from "../../../core/audit/finding";

/** What became of one bar mark. Values are texts as the schedules say them. */
export interface ChangeView {
  readonly kind: "added" | "removed" | "changed";
  readonly severity: Severity;
  /** steel of it may be cut already */
  readonly released: boolean;
  readonly name: string;
  /** cell of the newer sheet to jump to; null where the bar is gone from it */
  readonly cell: string | null;
  readonly cells: readonly { readonly field: string; readonly before: string; readonly after: string }[];
  /** "10 to 12 bars, 1.200 to 1.440 t" */
  readonly amount: string;
}

/** What the newer sheet changes against the older revision. */
export interface ComparisonView {
  readonly newer: string;
  readonly older: string;
  readonly changes: readonly ChangeView[];
  readonly pours: readonly {
    readonly pour: string;
    readonly bars: string;
    readonly tonnes: string;
    /** with its sign, tonnes */
    readonly difference: string;
  }[];
  readonly unchanged: number;
  /** what the comparison rests on */
  readonly notes: readonly string[];
}
