/**
 * Makes a job of an invented yard: a folder of workbooks with title blocks, each a schedule of so many rows.
 *
 * Run: npx tsx tests/_support/make-job.ts FOLDER BOOKS ROWS
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../core/schedule";

const HEAD = [
  ...["Member", "Bar mark", "Type and size", "No. of mbrs", "No. in each", "Total no.", "Length mm"],
  ...["Shape code", "A mm", "B mm", "C mm", "Pour"],
];
const SIZES = ["H10", "H12", "H16", "H20", "H25", "H32"];
const POURS = 24;
const BOOKS_A_FOLDER = 100;

/** The rows of one schedule: straight bars and U bars whose numbers agree with each other. */
export function madeRows(book: number, rows: number): Cell[][] {
  return Array.from({ length: rows }, (_, index): Cell[] => {
    const size = SIZES[(book * 7 + index * 3) % SIZES.length]!;
    const total = 2 + ((book + index * 5) % 40);
    const leg = 1000 + 25 * ((book * 13 + index * 11) % 120);
    const mark = String(index + 1).padStart(3, "0");
    const pour = `P${1 + ((book + Math.floor(index / 50)) % POURS)}`;
    const member = `M${book}-${1 + Math.floor(index / 50)}`;
    return [member, mark, size, 1, total, total, 2 * leg, "00", 2 * leg, null, null, pour];
  });
}

/** The bytes of one workbook of the job. */
export function madeBook(book: number, rows: number): Uint8Array {
  const number = `TL-${String(book + 1).padStart(5, "0")}`;
  const title: Cell[][] = [
    ["Tallow Lane Yard"],
    ["Job:", "Heron Street flats"],
    ["Schedule ref:", number],
    ["Revision:", "A"],
    [],
  ];
  return writeNewWorkbook({
    sheets: [{ name: "Schedule", rows: [...title, HEAD, ...madeRows(book, rows)] }],
  });
}

/** Writes the job; a hundred workbooks a folder. */
export function makeJob(folder: string, books: number, rows: number): void {
  for (let book = 0; book < books; book += 1) {
    const place = join(folder, `block-${String(1 + Math.floor(book / BOOKS_A_FOLDER)).padStart(3, "0")}`);
    mkdirSync(place, { recursive: true });
    writeFileSync(join(place, `TL-${String(book + 1).padStart(5, "0")}.xlsx`), madeBook(book, rows));
  }
}

const [, script, folder, books, rows] = process.argv;
if (script !== undefined && import.meta.url === pathToFileURL(script).href && folder !== undefined)
  makeJob(folder, Number(books), Number(rows));
