import type { Sheet } from "../../../core/schedule/sheet";
import type { SheetContent } from "../../workbook/workbook-port";
import type { Besides } from "../desk/besides";
import type { ComparisonView } from "./comparison-view";
import type { PrintedPage } from "./printed-page";
import type { TotalsView } from "./totals-view";

/** A schedule with all that the yard's pages rest on. */
export interface YardQuestion {
  readonly sheet: Sheet;
  /** the workbook's Shop sheet; null where it has none */
  readonly shop: Sheet | null;
  /** none where it is left out */
  readonly besides?: Besides;
  /** an id as the workbook wrote it; blank is the default */
  readonly standard: string;
  /** JSON of the workbook's audit settings; null where it keeps none */
  readonly settings: string | null;
}

export type PageKind = "tickets" | "cut list" | "labels";

/** An older revision: a sheet of the same workbook, or the bytes of an .xlsx file. */
export type OlderRevision = Sheet | Uint8Array;

/** Where the yard's side of the pane has its work done. Throws an Error with words for the user. */
export interface YardDesk {
  totals(question: YardQuestion): Promise<TotalsView>;
  /** the findings sheet, with the tonnes and their chart */
  findings(question: YardQuestion): Promise<SheetContent>;
  page(kind: PageKind, question: YardQuestion): Promise<PrintedPage>;
  compare(question: YardQuestion, older: OlderRevision): Promise<ComparisonView>;
}
