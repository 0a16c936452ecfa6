import type { PrintedPage } from "./engine/printed-page";

/** What the page about the pane can do with a page or a table that the yard made. */
export interface PageHost {
  /** null where the host cannot print: then the page is saved and printed from the browser */
  readonly print: ((page: PrintedPage) => void) | null;
  save(fileName: string, type: string, text: string): void;
}
