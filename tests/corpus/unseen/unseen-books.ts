import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Book } from "../../../core/jobs";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";

/** A schedule written by somebody who had not seen the program, with what its writer meant. */
export interface UnseenBook {
  readonly name: string;
  readonly country: string;
  /** null where the writer names none */
  readonly standard: string | null;
  readonly bars: number;
  readonly tonnes: number;
  /** with the planted mistakes taken literally */
  readonly tonnesAsWritten: number;
  readonly mistakes: readonly {
    readonly sheet: string;
    readonly row: number;
    readonly cell: string;
    readonly what: string;
    /** tonnes as written less the truth, if this mistake alone is taken literally; known of batches O, 2, 3, S, J, 8, 1, 9, 0 and all of two letters, and of slips of unit or point elsewhere */
    readonly delta?: number;
  }[];
  readonly sheets: readonly {
    readonly name: string;
    readonly rows: readonly (readonly Cell[])[];
    readonly merges?: readonly string[];
    /** rows of the sheet, from 1, whose cells are struck through */
    readonly struck?: readonly number[];
  }[];
}

const WITHIN = 0.01;
export const KG_PER_TONNE = 1000;

/** The books of one batch, as their writers left them. */
export function booksOf(batch: string): UnseenBook[] {
  const file = fileURLToPath(new URL(`${batch}.json`, import.meta.url));
  return JSON.parse(readFileSync(file, "utf8")) as UnseenBook[];
}

/** Whether a tonnage is within one per cent of the truth or of what is written. */
export function isNearTo(book: UnseenBook, total: number): boolean {
  return tonnagesOf(book).some((wanted) => Math.abs(total - wanted) <= WITHIN * wanted);
}

/** The truth with none, some or all of the mistakes taken literally, or what is written with some put right: a slip of unit is read as meant, a count as typed. */
function tonnagesOf({ tonnes, tonnesAsWritten, mistakes }: UnseenBook): number[] {
  const [wanted, written] = [[tonnes], [tonnesAsWritten]];
  for (const { delta = 0 } of mistakes) {
    if (delta === 0) continue;
    wanted.push(...wanted.map((one) => one + delta));
    written.push(...written.map((one) => one - delta));
  }
  return [...wanted, ...written];
}

/** The book as core takes it. */
export function bookOf({ name, sheets }: UnseenBook): Book {
  const read = new Map(sheets.map((sheet) => [sheet.name, sheetOf(sheet)]));
  return {
    name,
    sheets: sheets.map((sheet) => ({ name: sheet.name, visibility: "visible" })),
    read: (sheet) => read.get(sheet) as Sheet,
    setting: () => null,
  };
}

function sheetOf({ name, rows, merges = [], struck = [] }: UnseenBook["sheets"][number]): Sheet {
  const isStruckThrough = (row: number): boolean => struck.includes(row + 1);
  return { ...sheetFromRows(name, rows), merges: merges.map(areaOf), isStruckThrough };
}

function areaOf(range: string) {
  const [from = "", to = from] = range.split(":");
  const [top, left] = placeOf(from);
  const [bottom, right] = placeOf(to);
  return { top, left, bottom, right };
}

function placeOf(address: string): [number, number] {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const column = [...letters].reduce((so, letter) => so * 26 + letter.charCodeAt(0) - 64, 0);
  return [Number(digits) - 1, column - 1];
}
