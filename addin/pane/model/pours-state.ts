import type { ComparisonView } from "../engine/comparison-view";
import type { Pours } from "../engine/engine";
import type { JobView } from "../engine/job-view";
import type { PrintedPage } from "../engine/printed-page";
import type { TotalsView } from "../engine/totals-view";

/** How far the user has come in putting a cut list's rests on the Shop sheet. */
export interface RemnantStage {
  readonly step: "closed" | "open" | "written";
  /** why writing would count steel twice; null where it would not */
  readonly twice: string | null;
}

export interface PoursState {
  /** the schedule that the pages are of; null where no sheet is chosen */
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
  /** the totals are not of the schedule as it is */
  readonly isBehind: boolean;
  /** pours that the pages are of; null for all */
  readonly pours: Pours;
  readonly page: PrintedPage | null;
  readonly remnants: RemnantStage;
  readonly comparison: ComparisonView | null;
  /** the sheet with other files; null until some are chosen */
  readonly job: JobView | null;
}

export const CLOSED: RemnantStage = { step: "closed", twice: null };

export const NO_POURS: PoursState = {
  sheet: null,
  others: [],
  older: null,
  shopSheet: null,
  doing: null,
  totals: null,
  asksAboutTotals: null,
  isBehind: true,
  pours: null,
  page: null,
  remnants: CLOSED,
  comparison: null,
  job: null,
};
