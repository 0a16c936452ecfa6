import { GRADE_OF_SIZES, SIZE_BOUNDS } from "./grade-of-sizes.data";
import { namedInText } from "./stray-grades";

/** A grade and the sizes that a note gives it. */
export interface GradeOfNote {
  /** as KNOWN_GRADES has it */
  readonly grade: string;
  readonly typed: string;
  readonly holds: (size: number) => boolean;
}

const { fromBefore, fromBehind, toBefore, toBehind, range } = SIZE_BOUNDS.value;
const any = (words: readonly string[]): string => [...words].sort((a, b) => b.length - a.length).join("|");
const SIGN = String.raw`(?:[øφ∅⌀#]|(?<!\p{L})(?:d|db|rb|h|t|y|n|hd|dia\.?))\s?`;
const NUMBER = String.raw`(\d{1,2}(?:[.,]\d)?)(?![\d.,]\d|\d)`;
const SIZE = String.raw`(?:${SIGN}${NUMBER}(?:\s?mm)?|${NUMBER}\s?mm)`;
const RANGE = new RegExp(`${SIZE}\\s?(?:${any(range)})\\s?(?:${SIGN})?${NUMBER}`, "iu");
const FROM = new RegExp(
  `(?:${any(fromBefore)})\\s?${SIZE}|${SIZE}(?:\\s*\\([^)]*\\))?\\s?(?:${any(fromBehind)})`,
  "iu",
);
const TO = new RegExp(
  `(?:${any(toBefore)})\\s?${SIZE}|${SIZE}(?:\\s*\\([^)]*\\))?\\s?(?:${any(toBehind)})`,
  "iu",
);
const EACH = new RegExp(SIZE, "giu");

/**
 * What a note says of grades and sizes: "Ø6, Ø8: OB37; Ø10 and up: BST 500S". Parts that name no grade that is
 * known, or several, or no size, say nothing.
 */
export function gradesInNote(note: string): readonly GradeOfNote[] {
  if (note.length > GRADE_OF_SIZES.value.longest || !/\d/.test(note)) return [];
  return partsOf(note).flatMap((part) => {
    const known = namedInText(part).filter(({ isKnown }) => isKnown);
    const [one] = known;
    if (one === undefined || new Set(known.map(({ name }) => name)).size > 1) return [];
    const rest = known.reduce((text, { typed }) => text.replace(typed, " "), part);
    const holds = sizesIn(plain(rest));
    return holds === null ? [] : [{ grade: one.name, typed: one.typed, holds }];
  });
}

/** Parted at points and semicolons, and at commas where both sides name a grade. */
function partsOf(note: string): readonly string[] {
  return note.split(/[;；。\n]|\.\s/u).flatMap((part) => {
    const pieces: string[] = [];
    for (const piece of part.split(/[,，、/]/u)) {
      const before = pieces.at(-1);
      const isOwn = before === undefined || (hasGrade(before) && hasGrade(piece));
      if (isOwn) pieces.push(piece);
      else pieces[pieces.length - 1] = `${before},${piece}`;
    }
    return pieces;
  });
}

function hasGrade(text: string): boolean {
  return namedInText(text).some(({ isKnown }) => isKnown);
}

function sizesIn(text: string): ((size: number) => boolean) | null {
  const numbers = (found: RegExpExecArray | null): readonly number[] =>
    (found ?? []).slice(1).flatMap((one) => (one === undefined ? [] : Number(one.replace(",", "."))));
  const [least, most] = numbers(RANGE.exec(text));
  if (least !== undefined && most !== undefined) return (size) => size >= least && size <= most;
  const [from] = numbers(FROM.exec(text));
  if (from !== undefined) return (size) => size >= from;
  const [to] = numbers(TO.exec(text));
  if (to !== undefined) return (size) => size <= to;
  const each = [...text.matchAll(EACH)].flatMap((found) => numbers(found as RegExpExecArray));
  return each.length === 0 ? null : (size) => each.includes(size);
}

function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .normalize("NFC")
    .toLowerCase();
}
