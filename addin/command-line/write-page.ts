import { extname } from "node:path";
import { InputRefused } from "./input-refused";
import { refuseTarget, writeCopy } from "./write-copy";

/** Writes a page of its own. */
export function writePage(book: string, path: string, page: string): void {
  refusePage(book, path);
  writeCopy(path, new TextEncoder().encode(page));
}

/**
 * Refuses a page that would take the book's place, or whose name says another kind of file: a page called
 * plan.csv would open as something else.
 */
export function refusePage(book: string, path: string): void {
  refuseTarget(book, path);
  if (/^\.html?$/i.test(extname(path))) return;
  throw new InputRefused(
    `${path} is to be a page: give a name that ends in .html, and print it to PDF from a browser`,
  );
}
