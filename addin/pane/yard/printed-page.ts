import type { RemnantView } from "./remnant-view";

/** A whole page of its own, to be printed or kept. */
export interface PrintedPage {
  readonly title: string;
  readonly fileName: string;
  readonly html: string;
  /** bars that the page leaves out although they must be made, each with the reason and the remedy */
  readonly refused: readonly string[];
  /** what the page rests on, or leaves out on purpose */
  readonly notes: readonly string[];
  /** what a cut list does to the remnants on hand; null for other pages */
  readonly remnants: RemnantView | null;
}
