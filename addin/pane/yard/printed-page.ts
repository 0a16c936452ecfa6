/** A whole page of its own, to be printed or kept. */
export interface PrintedPage {
  readonly title: string;
  readonly fileName: string;
  readonly html: string;
  /** what the page leaves out, and why */
  readonly notes: readonly string[];
}
