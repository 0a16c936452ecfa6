import type { ComparisonView } from "./comparison-view";
import type { PrintedPage } from "./printed-page";
import type { TotalsView } from "./totals-view";

/** How far the user has come in putting a cut list's rests on the Shop sheet. */
export interface RemnantStage {
  readonly step: "closed" | "open" | "written";
  /** why writing would count steel twice; null where it would not */
  readonly twice: string | null;
}

export interface YardState {
  /** the schedule that the yard works from; null where no sheet is chosen */
  readonly sheet: string | null;
  /** other sheets that can hold an older revision */
  readonly others: readonly string[];
  /** the older revision chosen to compare with */
  readonly older: string | null;
  readonly shopSheet: string | null;
  /** what is being done */
  readonly doing: string | null;
  readonly totals: TotalsView | null;
  /** A Totals sheet of ours stands in the workbook: to be replaced, or kept beside a new one. */
  readonly asksAboutTotals: string | null;
  /** A findings sheet of ours that somebody has written on stands in the workbook. */
  readonly asksAboutFindings: string | null;
  readonly page: PrintedPage | null;
  readonly remnants: RemnantStage;
  readonly comparison: ComparisonView | null;
}

export const CLOSED: RemnantStage = { step: "closed", twice: null };

export const EMPTY_YARD: YardState = {
  sheet: null,
  others: [],
  older: null,
  shopSheet: null,
  doing: null,
  totals: null,
  asksAboutTotals: null,
  asksAboutFindings: null,
  page: null,
  remnants: CLOSED,
  comparison: null,
};
