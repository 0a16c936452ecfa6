import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { UnreadableWorkbook } from "../xlsx/unreadable-workbook";
import { InputRefused } from "./input-refused";

/** Bytes of a file from `start` on, fewer where it ends before `end`, and how many it holds in all. */
export function readPart(path: string, start: number, end: number) {
  return readingOf(path, () => {
    const file = openSync(path, "r");
    try {
      const bytes = new Uint8Array(end - start);
      for (let at = 0; at < bytes.length; ) {
        const count = readSync(file, bytes, at, bytes.length - at, start + at);
        if (count === 0) break;
        at += count;
      }
      return { length: fstatSync(file).size, bytes };
    } finally {
      closeSync(file);
    }
  });
}

/** What a file's reading gives; refuses it where it cannot be read. */
export function readingOf<T>(path: string, reading: () => T): T {
  try {
    return reading();
  } catch (error) {
    if (error instanceof InputRefused || error instanceof UnreadableWorkbook) throw error;
    const code = (error as NodeJS.ErrnoException).code;
    throw new InputRefused(
      code === "ENOENT" ? `there is no file ${path}` : `${path} cannot be read (${code})`,
    );
  }
}
