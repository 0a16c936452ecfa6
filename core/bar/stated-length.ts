import type { ScheduleReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import type { Sheet } from "../schedule/sheet";
import { MM_PER_UNIT } from "../units/unit-table";
import { notesElsewhere } from "./note-texts";
import { STATED_LENGTH } from "./stated-length.data";

/** How long bars may be by what a title or a note of the sheet says. */
export interface StatedLength {
  /** mm */
  readonly most: number;
  /** the cell that says it */
  readonly cell: string;
  readonly typed: string;
}

const LENGTH =
  /(?<![\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\d.,/@])(\d{1,5}(?:[.,]\d{1,2})?)\s?(mm|mts?|m|\u043c|\u7c73|متر|أمتار|م|เมตร|ม\.|מטר|מ'|μ\.|metr\p{L}{0,3}|ft|feet|'|\u2019)(?![\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Arabic}\d\u00b2\u00b3/])/giu;
const PARTS = /[;\uff1b\u3002\n]|\s{3,}|\.\s+(?=\p{Lu})/u;
/** rows of titles and notes that are looked through */
const MOST_ROWS = 200;

/** The least of the lengths that are called the most, else the longest stock length, on the book's other sheets where the sheet itself says none; null where none is said. */
export function statedLength(sheet: Sheet, { rowClasses }: ScheduleReading): StatedLength | null {
  const found: (StatedLength & { readonly isMost: boolean })[] = [];
  let looked = 0;
  for (let row = 0; row < rowClasses.length; row += 1) {
    const rowClass = rowClasses[row];
    if (rowClass !== "note" && rowClass !== "heading") continue;
    looked += 1;
    if (looked > MOST_ROWS) break;
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const cell = sheet.cell(row, column);
      if (typeof cell !== "string" || !/\p{Nd}/u.test(cell)) continue;
      for (const one of lengthsIn(cell)) found.push({ ...one, cell: cellAddress(sheet, row, column) });
    }
  }
  if (found.length === 0)
    for (const { text, cell } of notesElsewhere(sheet))
      if (/\p{Nd}/u.test(text)) for (const one of lengthsIn(text)) found.push({ ...one, cell });
  const most = found.filter(({ isMost }) => isMost).sort((one, other) => one.most - other.most)[0];
  const longest = [...found].sort((one, other) => other.most - one.most)[0];
  const best = most ?? longest;
  return best === undefined ? null : { most: best.most, cell: best.cell, typed: best.typed };
}

/** A title or note says that laps are in the lengths. */
export function saysLapsIncluded(sheet: Sheet, { rowClasses }: ScheduleReading): boolean {
  const { laps, included } = STATED_LENGTH.value;
  return rowClasses.slice(0, MOST_ROWS).some((rowClass, row) => {
    if (rowClass === "blank") return false;
    const isOfBars = rowClass !== "note" && rowClass !== "heading";
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const cell = sheet.cell(row, column);
      if (typeof cell !== "string" || (isOfBars && cell.length > STATED_LENGTH.value.longest)) continue;
      const plain = plainOf(cell);
      // beside a bar it is said of that bar, unless it is said of laps in general
      if (isOfBars && !plain.startsWith("laps")) continue;
      if (holds(plain, laps) && holds(plain, included)) return true;
    }
    return false;
  });
}

function lengthsIn(cell: string): (Omit<StatedLength, "cell"> & { readonly isMost: boolean })[] {
  const { stock, most, from, to, longest } = STATED_LENGTH.value;
  return cell.split(PARTS).flatMap((part) => {
    if (part.length > longest) return [];
    const plain = plainOf(part);
    const lengths = [...plain.matchAll(LENGTH)].flatMap((match) => {
      const length = Number((match[1] ?? "").replace(",", ".")) * MM_PER_UNIT[unitOf(match[2] ?? "")];
      return length >= from && length <= to
        ? [{ length, at: match.index, end: match.index + match[0].length }]
        : [];
    });
    const isMost = holds(plain, most);
    const last = lengths.at(-1);
    if (last === undefined) return [];
    const isStated =
      holds(plain, stock) || (isMost && holdsBars(plain)) || isBeside(plain, last.at, last.end);
    if (!isStated) return [];
    const longestOf = Math.max(...lengths.map(({ length }) => length));
    return [{ most: longestOf, typed: part.trim(), isMost }];
  });
}

function unitOf(typed: string): "mm" | "m" | "ft" {
  if (typed === "mm") return "mm";
  return /^(?:ft|feet|'|\u2019)$/.test(typed) ? "ft" : "m";
}

const WORDS_BETWEEN = 20;

/** A word for bars stands close before the length, or right behind it. */
function isBeside(plain: string, at: number, end: number): boolean {
  return holdsBars(plain.slice(Math.max(0, at - WORDS_BETWEEN), at)) || holdsBars(plain.slice(end, end + 8));
}

const holdsBars = (plain: string): boolean => holds(plain, STATED_LENGTH.value.bars);

function holds(plain: string, words: readonly string[]): boolean {
  return words.some((word) => {
    for (let at = plain.indexOf(word); at >= 0; at = plain.indexOf(word, at + 1))
      if (at === 0 || !/\p{Script=Latin}|\p{Script=Greek}|\p{Script=Cyrillic}/u.test(plain.charAt(at - 1)))
        return true;
    return false;
  });
}

function plainOf(text: string): string {
  return (
    text
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      .replaceAll("\u0142", "l")
      // digits of Arabic and Persian, and their decimal sign
      .replace(/[\u0660-\u0669\u06f0-\u06f9]/g, (digit) => String(digit.charCodeAt(0) & 15))
      .replaceAll("\u066b", ".")
      .toLowerCase()
  );
}
