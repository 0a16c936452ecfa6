import type { RowCounts } from "../../../core/audit/audit-report";
import type { RuleOff, Waiver } from "../../../core/audit/audit-settings";
import type { Finding } from "../../../core/audit/finding";
import type { ChangedLimit, Limits } from "../../../core/audit/limits";
import type { ColumnKind } from "../../../core/schedule/bar-row";
import type { ColumnCorrection } from "../../../core/schedule/read-options";
import type { ScheduleHead } from "../../../core/schedule/schedule-head";
import type { NotInTotal } from "../../../core/totals/row-mass";

/** How one column of the schedule was taken. */
export interface ColumnView {
  /** "F" */
  readonly letter: string;
  readonly header: string;
  /** by which a correction names it: its header, or its letter where that says too little */
  readonly name: string;
  /** null where no known word covers its header */
  readonly kind: ColumnKind | null;
  /** what it was taken for, in words */
  readonly taken: string;
  readonly unit: string | null;
  readonly guess: string | null;
  readonly corrected: boolean;
}

export interface FindingView extends Finding {
  /** stands for the finding as long as the report does */
  readonly key: string;
  /** where the rule comes from and how far to trust it; null where it rests on no document */
  readonly source: string | null;
  /** the rule's name as words: "former too small" */
  readonly rule: string;
  /** the bar's; null where the finding is about no one bar */
  readonly member: string | null;
  readonly pour: string | null;
  readonly mark: string | null;
  /** under which the workbook keeps a waiver of it; null for a sheet-wide finding */
  readonly waiverKey: string | null;
  /** what stands in the fix's cells now, in its order */
  readonly before: readonly CellContent[];
  /** by which the open guess that it tells of is confirmed; null where it tells of none */
  readonly guess: string | null;
  /** ways to read the column that it doubts, for the user to choose one; empty where there is no choice */
  readonly ways: readonly WayOfReading[];
}

/** One way to read a column, kept in the workbook once the user chooses it. */
export interface WayOfReading {
  readonly words: string;
  readonly correction: ColumnCorrection;
}

/** A limit as it is: the workbook's own, else what the Shop sheet or the standard says. */
export interface LimitView {
  readonly name: keyof Limits;
  readonly words: string;
  readonly unit: "kg" | "mm";
  readonly own: ChangedLimit | null;
  /** how much the workbook's own limit hides, in words; null where it has none */
  readonly hidden: string | null;
  readonly inForce: number | null;
  readonly source: string | null;
}

/** Everything the user decided on how the workbook is checked. */
export interface DecisionsView {
  readonly rulesOff: readonly RuleOffView[];
  readonly limits: readonly LimitView[];
  readonly waivers: readonly WaiverView[];
  readonly corrections: readonly ColumnCorrection[];
  readonly confirmed: readonly string[];
  /** what could not be read of the stored settings */
  readonly problem: string | null;
}

export interface RuleOffView extends RuleOff {
  readonly rule: string;
  /** how much is not told, in words; null where it is not obeyed because the rule finds what is unsafe */
  readonly hidden: string | null;
}

export interface WaiverView extends Waiver {
  readonly rule: string;
  /** the finding that it hides; null where it no longer applies */
  readonly message: string | null;
  readonly cell: string | null;
  /** of another sheet, so that this check says nothing of it */
  readonly isElsewhere: boolean;
}

/** A text is kept apart from the number that looks like it. */
export type CellContent = string | number | boolean | null;

/** What the pane shows of an audit of one sheet. */
export interface AuditView {
  readonly sheet: string;
  /** whether its bars stand in columns, one beside the other */
  readonly isTurned: boolean;
  readonly standard: { readonly id: string; readonly title: string };
  readonly findings: readonly FindingView[];
  readonly rows: RowCounts;
  /** the sheet's own row number of the header, from 1 */
  readonly header: number | null;
  readonly columns: readonly ColumnView[];
  readonly unread: readonly { readonly place: string; readonly reason: string }[];
  readonly decisions: DecisionsView;
  /** each decision because of which something is not told, in one line */
  readonly notTold: readonly string[];
  /** all of them in one line, with who decided, when and why; null where there is none */
  readonly notToldLine: string | null;
  /** what the sheet calls itself */
  readonly head: ScheduleHead;
  /** where no header was found: what to do about it */
  readonly noHeader: string | null;
  /** Rows to colour: the sheet's, from 0. */
  readonly flags: readonly RowFlagView[];
  /** by code, what the rules that found something ask and why */
  readonly rules: Readonly<Record<string, { readonly summary: string; readonly why: string }>>;
  /** names of the other sheets that were read with it */
  readonly otherSheets: readonly string[];
  /** kg of the bars whose mass could be worked out, as the totals count them: none struck through or superseded */
  readonly mass: number;
  /** kg of bars with an unsafe or unbendable finding */
  readonly massAffected: number;
  /** why totals wait for the user; then `mass` and `massAffected` are not to be shown. Null where they do not */
  readonly held: string | null;
  /** bar rows that are in no total, with what to look at */
  readonly notInTotal: readonly NotInTotal[];
}

export interface RowFlagView {
  readonly row: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
  readonly colour: Finding["severity"];
  readonly note: string;
}

/** One bar of the sheet, drawn and reckoned. Lengths are texts in the standard's unit. */
export interface BarView {
  /** the sheet's own row number, from 1; its column's where the bars stand in columns */
  readonly row: number;
  /** "row 7", or "column G" */
  readonly place: string;
  readonly title: string;
  readonly shape: string | null;
  /** what a drawing says in lines: radius, angles, how sure its course is */
  readonly notes: readonly string[];
  /** an `<svg>` element; null where the bar cannot be drawn */
  readonly svg: string | null;
  /** why it is not drawn or not reckoned */
  readonly trouble: string | null;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
}
