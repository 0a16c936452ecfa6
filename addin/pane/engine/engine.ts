import type { DecisionAhead } from "../../../core/audit/what-it-would-hide";
import type { Sheet } from "../../../core/schedule/sheet";
import type { CellEdit, SheetContent } from "../../workbook/workbook-port";
import type { AuditView, BarView } from "./audit-view";
import type { MarkView, MissingFact, ShopEdits, TicketView, TrialEntry } from "./bench-view";
import type { ComparisonView } from "./comparison-view";
import type { ExplainedView } from "./explained-view";
import type { FollowView } from "./follow-view";
import type { GivenFile, JobView } from "./job-view";
import type { OtherSheets } from "./other-sheets";
import type { PrintedPage } from "./printed-page";
import type { TotalsView } from "./totals-view";

/** A schedule with all that its judgement rests on. */
export interface CheckQuestion {
  readonly sheet: Sheet;
  /** the workbook's Shop sheet; null where it has none */
  readonly shop: Sheet | null;
  readonly otherSheets: OtherSheets;
  /** an id as the user or the workbook wrote it; blank is the default */
  readonly standard: string;
  /** JSON of the workbook's audit settings; null where it keeps none */
  readonly settings: string | null;
}

/** A sheet as it is after an edit of rows `firstRow` to `lastRow`, the sheet's from 0. */
export interface EditedSheet {
  readonly sheet: Sheet;
  readonly firstRow: number;
  readonly lastRow: number;
}

export type PageKind = "tickets" | "cut list" | "labels" | "loads" | "findings" | "questions" | "wall chart";

/** Names of the pours that a page is of, as the totals name them; null for all. */
export type Pours = readonly string[] | null;

/** An older revision: a sheet of the same workbook, or the bytes of an .xlsx file. */
export type OlderRevision = Sheet | Uint8Array;

/**
 * Where the pane has core's work done: in a worker in the product, in place in tests. A sheet is checked
 * once, and every page of it is made of that check. Throws an Error with words for the user.
 */
export interface Engine {
  check(question: CheckQuestion): Promise<AuditView>;
  /** Judges again what an edit can have changed, with the standard and settings of the sheet's last check. */
  recheck(edited: EditedSheet): Promise<AuditView>;
  /**
   * The bar of a row, the sheet's from 0, as its last check read it; of a column where the bars stand in columns.
   * Null where the line is no bar.
   */
  bar(sheet: string, line: number): Promise<BarView | null>;
  /** Why each column and row was read as it was. */
  explain(sheet: string): Promise<ExplainedView>;
  /** What a decision would keep from being told, in words. */
  ahead(sheet: string, decision: DecisionAhead): Promise<string>;
  /** What else must change where some cells are, tried on a copy. */
  follows(sheet: string, edits: readonly CellEdit[]): Promise<FollowView>;
  totals(sheet: string): Promise<TotalsView>;
  /** the findings sheet, with the tonnes and their chart */
  findings(sheet: string): Promise<SheetContent>;
  /** a sheet Standard to look figures up on, or that of an .xlsx file where its bytes are given */
  ownSheet(sheet: string, file: Uint8Array | null): Promise<SheetContent>;
  /** the bars of a sheet, those that are not to be made with the reason */
  marks(sheet: string): Promise<readonly MarkView[]>;
  /** the ticket of a row, the sheet's own from 1; null where it is no bar to be made */
  ticket(sheet: string, row: number): Promise<TicketView | null>;
  /** the cells of the Shop sheet that a trial is written into */
  trialEdits(sheet: string, trial: TrialEntry): Promise<ShopEdits>;
  /** what nobody has written down of a machine */
  missingFacts(sheet: string, machine: string): Promise<readonly MissingFact[]>;
  page(kind: PageKind, sheet: string, pours: Pours): Promise<PrintedPage>;
  compare(sheet: string, older: OlderRevision): Promise<ComparisonView>;
  /** The sheet as one schedule of a job whose others stand in files. */
  withFiles(sheet: string, files: readonly GivenFile[]): Promise<JobView>;
  /** What a page of the sheet would be made of now: another text where that is something else. */
  basis(sheet: string): Promise<string>;
  /** Another workbook was opened: no sheet of the last one is known any longer. */
  forget(): Promise<void>;
  /** Ends what is under way, however long it would take. Sheets are to be checked anew. */
  stop(): void;
}
