import { refuseTarget, writeCopy } from "./write-copy";

/** Writes a page of its own; refuses to take the book's place. */
export function writePage(book: string, path: string, page: string): void {
  refuseTarget(book, path);
  writeCopy(path, new TextEncoder().encode(page));
}
