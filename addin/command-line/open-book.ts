import { readFileSync, statSync } from "node:fs";
import { basename, extname } from "node:path";
import type { Book } from "../../core/jobs";
import { openWorkbook, type Workbook } from "../xlsx/read/open-workbook";
import { readCsv, refuseTooLong } from "../xlsx/read/read-csv";
import type { SheetReading } from "../xlsx/read/read-sheet";
import { workbookSetting } from "../xlsx/read/workbook-setting";
import { BytesAgain } from "./bytes-again";
import { InputRefused } from "./input-refused";
import { nativeZip, nativeZipOf } from "./native-zip";
import { readingOf, readPart } from "./read-part";
import { tidySooner } from "./tidy-sooner";
import type { FileThere } from "./unpacking-thread";

/** Bytes of a packed sheet from which memory is worth reading its file twice. */
const LARGE = 16 * 1024 * 1024;

/** A schedule file, whichever kind it is. */
export interface BookFile extends Book {
  /** null for a .csv */
  readonly workbook: Workbook | null;
  /** null where it cannot be read again */
  readonly there: FileThere | null;
  /** Gives back the memory of the cells that were read: nothing but a copy is made of the book any more. */
  letGo(): void;
}

/** Opens a .xlsx, .xlsm or .csv file. */
export function openBook(path: string): BookFile {
  const bytes = readBook(path);
  // what a pipe gave is not given again
  return openBookOf(path, bytes, statSync(path).isFile());
}

/** The bytes of a file that may be a book; refuses a folder, and a text that is too long. */
export function readBook(path: string): Uint8Array {
  return readBytes(path, isTextName(path));
}

const isTextName = (path: string): boolean => /^\.(csv|tsv|txt)$/i.test(extname(path));

/** The book of a file whose bytes are read already; `isThere` where they can be read from it again. */
export function openBookOf(path: string, bytes: Uint8Array, isThere = false): BookFile {
  const name = basename(path);
  const isText = isTextName(path);
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  if (isText && !isZip) {
    const sheet = readCsv(bytes, name.replace(/\.[^.]*$/, ""));
    const sheets = [{ name: sheet.name, visibility: "visible" as const }];
    return {
      name,
      workbook: null,
      there: null,
      sheets,
      read: () => sheet,
      setting: () => null,
      letGo: () => undefined,
    };
  }
  tidySooner(bytes.length);
  const file = new BytesAgain(bytes, { read: (start, end) => readPart(path, start, end) }, path);
  const there = isThere ? { path, length: bytes.length } : null;
  const native = there === null ? nativeZip : nativeZipOf(there);
  const workbook = openWorkbook(file, undefined, native);
  const given: SheetReading[] = [];
  const { entries } = workbook.parts.archive;
  return {
    name,
    workbook,
    there,
    sheets: workbook.sheets,
    read: (sheet) => {
      const reading = workbook.read(sheet);
      given.push(reading);
      const packed = entries.get(workbook.sheet(sheet)?.part ?? "")?.compressedSize ?? 0;
      // nothing of it is asked for any more until the copy is made
      if (isThere && packed > LARGE && packed * 2 > file.bytes.length) file.letGo();
      return reading;
    },
    letGo: () => {
      for (const reading of given.splice(0)) reading.letGo();
    },
    setting: (setting) => workbookSetting(workbook, setting),
  };
}

function readBytes(path: string, isText: boolean): Uint8Array {
  return readingOf(path, () => {
    const stat = statSync(path);
    if (stat.isDirectory()) throw new InputRefused(`${path} is a folder: name a .xlsx or .csv file`);
    if (isText) refuseTooLong(stat.size, basename(path));
    return readFileSync(path);
  });
}
