import { isKnownName, plainName } from "../../bars/known-grade";
import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import { sizeElsewhere } from "../cells/size-elsewhere";
import { EVERYDAY_SIZES } from "../evidence/evidence.data";
import type { Cell } from "../sheet";
import type { FoundColumn } from "./header-blocks";
import type { HeaderSource } from "./header-source";
import type { HeaderMeaning } from "./recognise-header";

/** rows under a header whose cells help to say what its words mean */
export const SAMPLED_TYPES = 12;
const STRAIGHT = /^(?:str|straight|bent|st|s)$/i;

/** The filled cells of a column in the first rows under a header. */
function cellsUnder(source: HeaderSource, bottom: number, column: number): readonly Cell[] {
  const filled: Cell[] = [];
  const end = Math.min(source.rowCount, bottom + 1 + SAMPLED_TYPES);
  for (let row = bottom + 1; row < end; row += 1) {
    const cell = source.cells(row)[column] ?? null;
    if (cell !== null && String(cell).trim() !== "") filled.push(cell);
  }
  return filled;
}

const isText = (cell: Cell): cell is string => typeof cell === "string";
const isTyped = (cell: Cell): cell is string | number => isText(cell) || typeof cell === "number";

const LABEL = /^\p{L}{1,3}\d{1,4}\p{L}?$/u;

/** "N" or "No." over labels such as N1, N2 heads marks and numbers no rows. */
export function serialsByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  if (columns.some(({ meaning }) => meaning?.kind === "mark")) return;
  const index = columns.findIndex(({ meaning, corrected }) => meaning?.serial === true && !corrected);
  const one = columns[index];
  if (one === undefined || one.meaning === null) return;
  const texts = cellsUnder(source, bottom, one.column).filter(isText).map(cleanText);
  if (texts.length < 2 || texts.filter((text) => LABEL.test(text)).length * 2 <= texts.length) return;
  columns[index] = { ...one, meaning: { ...one.meaning, kind: "mark", serial: false, weak: false } };
}

/** "R1", "Lot 2", "3": the number of a delivery, which no date and no word for yes is */
const LOT = /^(?:(?:r|l|rel\.?|lot|release)\s?-?)?\d{1,2}$/i;

/** "Release" over R1, R2 names the lots in which the bars go out and says of none that it is released. */
export function lotsByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  if (columns.some(({ meaning }) => meaning?.kind === "pour")) return;
  const index = columns.findIndex(
    ({ meaning, header, corrected }) =>
      meaning?.kind === "released" && !corrected && /^release(?: no\.?)?$/i.test(cleanText(header)),
  );
  const one = columns[index];
  if (one === undefined || one.meaning === null) return;
  const texts = cellsUnder(source, bottom, one.column)
    .filter(isTyped)
    .map((cell) => cleanText(String(cell)));
  const lots = texts.filter((text) => LOT.test(text));
  // a column of "1" alone, or of 1 and 0, says yes and no
  const isFlag = lots.every((text) => /^[01]$/.test(text));
  if (isFlag || lots.length < 2 || lots.length * 2 <= texts.filter((text) => text !== "").length) return;
  columns[index] = { ...one, meaning: { ...one.meaning, kind: "pour" } };
}

const LEAST_NUMBERED = 4;
const RUNNING = 0.8;
const OF_MEMBERS: ReadonlySet<string> = new Set(["each", "members"]);
/** "01", typed as text */
const NUMERAL = /^\s*\d{1,4}\s*$/;

/** "No." over 1, 2, 3 and so on numbers the rows, where another column counts the bars. */
export function rowNumbersByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  const counts = columns.filter(({ meaning, corrected }) => meaning?.kind === "total" && !corrected);
  const isCounted = counts.length > 1 || columns.some(({ meaning }) => OF_MEMBERS.has(meaning?.kind ?? ""));
  if (!isCounted) return;
  const hasMark = columns.some(({ meaning }) => meaning?.kind === "mark");
  for (const one of counts) {
    // "Total no." numbers none, whatever stands under it, but where another column is called so
    if (one.meaning?.weak !== true && counts.length < 2) continue;
    const numbers = cellsUnder(source, bottom, one.column)
      .filter((cell) => typeof cell === "number" || (isText(cell) && NUMERAL.test(cell)))
      .map(Number);
    const steps = numbers.filter((number, at) => at > 0 && number === (numbers[at - 1] as number) + 1).length;
    if (numbers.length < LEAST_NUMBERED || steps < RUNNING * (numbers.length - 1)) continue;
    const kind = hasMark ? "ignored" : "mark";
    const meaning = { ...(one.meaning as NonNullable<FoundColumn["meaning"]>), kind, weak: false } as const;
    columns[columns.indexOf(one)] = { ...one, meaning };
    return;
  }
}

/** "Bar" over running numbers, or over Z1a and Z1b, and "Bar no." over sizes: the numbers are marks, whatever the words say more often. */
export function sizesByContent(
  columns: FoundColumn[],
  source: HeaderSource,
  bottom: number,
  standard: Standard,
): void {
  const indexOf = (is: (meaning: HeaderMeaning) => boolean): number =>
    columns.findIndex(({ meaning, corrected }) => meaning !== null && !corrected && is(meaning));
  const size = indexOf(({ kind }) => kind === "size");
  const ofMark = indexOf(({ kind }) => kind === "mark");
  // "No." numbers rows, or bars
  const mark = ofMark < 0 ? indexOf(({ serial }) => serial) : ofMark;
  const [sized, marked] = [columns[size], columns[mark]];
  if (!sized?.meaning || !marked?.meaning) return;
  const filled = ({ column }: FoundColumn): string[] =>
    cellsUnder(source, bottom, column)
      .filter((cell) => isTyped(cell) && HOLDS_DIGIT.test(String(cell)))
      .map((cell) => cleanText(String(cell)));
  const [sizes, marks] = [filled(sized), filled(marked)];
  const isSize = (text: string): boolean =>
    isBarSize(text, standard) || sizeElsewhere(text.replace(/^(?=\d$)/, "#")) !== null;
  // "H17" may be a size that nobody rolls
  const areNone =
    sizes.length >= LEAST_NUMBERED && !sizes.some((text) => isSize(text) || LETTERED.test(text));
  const areMarks = areRunning(sizes) || areNone;
  if (!areMarks || areRunning(marks) || new Set(marks).size * 2 > marks.length + 1) return;
  if (!marks.every(isSize)) return;
  columns[size] = { ...sized, meaning: { ...marked.meaning, kind: "mark", serial: false, weak: false } };
  columns[mark] = { ...marked, meaning: { ...sized.meaning, kind: "size" } };
}

/** "D (mm)" over Ø12, d16 or D20 holds diameters and no leg, where no other column has the sizes. */
export function diametersByContent(
  columns: FoundColumn[],
  source: HeaderSource,
  bottom: number,
  standard: Standard,
): void {
  if (columns.some(({ meaning }) => meaning?.kind === "size")) return;
  const index = columns.findIndex(
    ({ meaning, header, corrected }) =>
      meaning?.kind === "D" && !corrected && /^d\W*(?:mm)?\W*$/i.test(header.trim()),
  );
  const one = columns[index];
  if (!one?.meaning) return;
  const typed = cellsUnder(source, bottom, one.column)
    .filter((cell) => HOLDS_DIGIT.test(String(cell)))
    .map((cell) => cleanText(String(cell)));
  const isSigned = typed.every((text) => SIGNED.test(text));
  const isInMm = one.meaning.unit === "mm" && columns[index - 1]?.meaning?.kind !== "C";
  const areSizes = typed.every((text) => isBarSize(text.replace(SIGNED, ""), standard));
  if (typed.length < 2 || !areSizes || !(isSigned || isInMm)) return;
  columns[index] = { ...one, meaning: { ...one.meaning, kind: "size", unit: null } };
}

const SIGNED = /^(?:\u00d8|d|phi)\s?(?=\d)/i;
const HOLDS_DIGIT = /\d/;

/** "01", "02" and so on, or "P1", "P2": each one more than the one before. */
function areRunning(texts: readonly string[]): boolean {
  const numbers = texts.map((text) => Number(/(?<!\d)\d+$/.exec(text)?.[0] ?? Number.NaN));
  const steps = numbers.filter((number, at) => at > 0 && number === (numbers[at - 1] as number) + 1).length;
  return numbers.length >= LEAST_NUMBERED && steps >= RUNNING * (numbers.length - 1);
}

/** "Elementos" over small whole numbers says how many members there are, where another column counts the bars of each. */
export function membersByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  if (columns.some(({ meaning }) => meaning?.kind === "members")) return;
  if (!columns.some(({ meaning }) => meaning?.kind === "each")) return;
  const index = columns.findIndex(({ meaning, column, corrected }) => {
    if (meaning?.kind !== "member" || corrected) return false;
    const filled = cellsUnder(source, bottom, column);
    const isRunning =
      filled.length > 2 && filled.every((cell, at) => Number(cell) === Number(filled[0]) + at);
    const counts = filled.filter((cell) => typeof cell === "number" && Number.isInteger(cell) && cell > 0);
    return counts.length > 1 && counts.length === filled.length && !isRunning;
  });
  const one = columns[index];
  if (one === undefined || one.meaning === null) return;
  columns[index] = { ...one, meaning: { ...one.meaning, kind: "members", weak: false } };
}

/** "Bar type" may hold grades, sizes or shapes: where no other column is for them, its first cells tell. */
export function typesByContent(
  columns: FoundColumn[],
  source: HeaderSource,
  bottom: number,
  standard: Standard,
): void {
  const kinds = columns.map(({ meaning }) => meaning?.kind);
  const index = columns.findIndex(
    ({ meaning, header, corrected }) => meaning?.kind === "grade" && !corrected && /typ/i.test(header),
  );
  const one = columns[index];
  if (one === undefined || one.meaning === null) return;
  const texts = cellsUnder(source, bottom, one.column).filter(isText).map(cleanText);
  const most = (is: (text: string) => boolean) => texts.filter(is).length * 2 > texts.length;
  if (!kinds.includes("size") && most((text) => /\d/.test(text) && isBarSize(text, standard))) {
    columns[index] = { ...one, meaning: { ...one.meaning, kind: "size" } };
  } else if (!kinds.includes("shape") && most((text) => STRAIGHT.test(text))) {
    columns[index] = { ...one, meaning: { ...one.meaning, kind: "shape" } };
  }
}

/** "N14", "\u00d812": letters or a sign before a number */
const LETTERED = /^(?:\p{L}{1,2}|[\u00d8\u00f8\u03a6\u03c6\u2205#])\s?(\d{1,2})$/u;
const LEAST_LETTERED = 4;

/** "N" over N14, N20 and N14 again holds sizes, where no other column has them: each stands in several rows. */
export function letteredSizesByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  if (columns.some(({ meaning }) => meaning?.kind === "size")) return;
  const index = columns.findIndex(({ column, meaning, corrected }) => {
    if (corrected || meaning === null || !(meaning.weak || meaning.serial)) return false;
    const filled = cellsUnder(source, bottom, column);
    if (filled.some((cell) => typeof cell === "number")) return false;
    const texts = filled.filter(isText).map((text) => text.trim());
    const areSizes = texts.every((text) => EVERYDAY_SIZES.value.includes(Number(LETTERED.exec(text)?.[1])));
    return texts.length >= LEAST_LETTERED && areSizes && new Set(texts).size * 3 <= texts.length * 2;
  });
  const one = columns[index];
  if (one?.meaning == null) return;
  columns[index] = {
    ...one,
    meaning: { ...one.meaning, kind: "size", unit: null, weak: false, serial: false },
  };
}

const LEAST_GRADES = 3;
const SHARE_OF_GRADES = 0.8;

/** Words that nobody knows, over nothing but steels that everybody knows: "Kv." over B500B heads grades. */
export function gradesByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  if (columns.some(({ meaning }) => meaning?.kind === "grade")) return;
  const index = columns.findIndex(({ column, meaning, corrected }) => {
    if (meaning !== null || corrected) return false;
    const filled = cellsUnder(source, bottom, column);
    if (filled.some((cell) => typeof cell === "number")) return false;
    const texts = filled.filter(isText).filter(({ length }) => length <= LONGEST_VALUE);
    const known = texts.filter((text) => isKnownName(plainName(text.trim())));
    return known.length >= LEAST_GRADES && known.length >= SHARE_OF_GRADES * texts.length;
  });
  const one = columns[index];
  if (one === undefined) return;
  const meaning = { kind: "grade", unit: null, weak: false, otherwise: null, serial: false } as const;
  columns[index] = { ...one, meaning };
}

const LEAST_SHAPES = 4;
/** what a bent bar looks like: I, L, U, C, Z, S, O, J, V, T */
const DRAWN_AS_LETTER = /^[ILUCZSOJVT]$/i;

/** Words that nobody knows, over nothing but letters that bars look like, beside legs: "TIPO" over I, L, U heads shapes. */
export function shapesByContent(columns: FoundColumn[], source: HeaderSource, bottom: number): void {
  const kinds = new Set(columns.map(({ meaning }) => meaning?.kind));
  if (kinds.has("shape") || !kinds.has("A") || !kinds.has("B")) return;
  const index = columns.findIndex(({ column, meaning, corrected }) => {
    if (meaning !== null || corrected) return false;
    const filled = cellsUnder(source, bottom, column);
    const letters = filled.filter(isText).map((text) => text.trim().toUpperCase());
    if (letters.length < LEAST_SHAPES || letters.length < filled.length) return false;
    const isBent = letters.includes("L") || letters.includes("U") || letters.includes("C");
    return isBent && letters.every((text) => DRAWN_AS_LETTER.test(text)) && new Set(letters).size > 1;
  });
  const one = columns[index];
  if (one === undefined) return;
  const meaning = { kind: "shape", unit: null, weak: false, otherwise: null, serial: false } as const;
  columns[index] = { ...one, meaning };
}

export function isBarSize(typed: string | number, standard: Standard): boolean {
  if (typeof typed === "string" && typed.length > LONGEST_VALUE) return false;
  const reading = standard.readSize(typed);
  return !isRefusal(reading) && reading.bar !== null;
}
