import type { SummaryBlock, TotalRow } from "../bar-row";

/** A block of sums by size that is read line by line. */
export type OpenSummary = SummaryBlock & {
  readonly rows: TotalRow[];
  /** last row that is one of its lines for sure */
  readonly until: number | null;
};
