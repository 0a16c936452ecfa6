import type { Sheet } from "../../../core/schedule/sheet";
import type { AuditView, BarView } from "./audit-view";
import type { Besides } from "./besides";

export interface AuditQuestionText {
  readonly sheet: Sheet;
  /** the workbook's Shop sheet; null where it has none */
  readonly shop: Sheet | null;
  readonly besides: Besides;
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

/** Where the pane has core's work done: in a worker in the product, in place in tests. */
export interface AuditDesk {
  /** Audits one sheet. Throws an Error with words for the user where the standard is not held. */
  audit(question: AuditQuestionText): Promise<AuditView>;
  /** Judges again what an edit can have changed, with the standard and settings of the sheet's last audit. */
  recheck(edited: EditedSheet): Promise<AuditView>;
  /** The bar of a row, the sheet's from 0, as its last audit read it; null where the row is no bar. */
  bar(sheet: string, row: number): Promise<BarView | null>;
  /** Another workbook was opened: no sheet of the last one is known any longer. */
  forget(): Promise<void>;
  /** Ends what is under way, however long it would take. Sheets are to be audited anew. */
  stop(): void;
}
