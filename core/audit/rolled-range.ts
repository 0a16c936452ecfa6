import type { BarFacts } from "../bar/bar-facts";
import { noteTexts } from "../bar/note-texts";
import type { SheetFacts } from "../bar/sheet-facts";
import { ROLLED_RANGES, type RolledRange } from "./rolled-ranges.data";

/** bars whose rows are looked through for the document */
const MOST_BARS = 5;

const { ranges, from, to, leastSizes, leastUnnamed } = ROLLED_RANGES.value;
const PATTERNS = ranges.map((range) => ({
  range,
  patterns: range.names.map(
    ([letters, number]) => new RegExp(`(?<!\\p{L})(?:${letters})[\\s.:-]{0,3}${number}(?!\\d)`, "iu"),
  ),
}));
const ANY_NAME = new RegExp(
  PATTERNS.flatMap(({ patterns }) => patterns.map(({ source }) => source)).join("|"),
  "iu",
);

/** The one document of steel that the words of a sheet name; null of none and of several. */
export function rangeNamed({ sheet, reading, bars }: SheetFacts): RolledRange | null {
  const texts = [...noteTexts(sheet, reading)].map(({ text }) => text);
  for (const { row } of bars.slice(0, MOST_BARS))
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const cell = sheet.cell(row.row, column);
      if (typeof cell === "string") texts.push(cell);
    }
  const named = texts.filter((text) => ANY_NAME.test(text));
  const found = PATTERNS.filter(({ patterns }) =>
    patterns.some((one) => named.some((text) => one.test(text))),
  );
  return found.length === 1 ? (found[0]?.range ?? null) : null;
}

/** True of a bar whose size the document does not hold, while it holds all others of the list. */
export function isOutOf(range: RolledRange, facts: BarFacts, sheet: SheetFacts): boolean {
  const asked = askedOf(facts, sheet, leastSizes, 1);
  return asked !== null && !holdsAll(range, [asked.own]) && holdsAll(range, asked.others);
}

/** True of a bar whose size no country rolls together with those that several bars have, though one rolls these. */
export function isOutOfAll(facts: BarFacts, sheet: SheetFacts): boolean {
  const asked = askedOf(facts, sheet, leastUnnamed, 2);
  if (asked === null || !ranges.some((range) => holdsAll(range, asked.others))) return false;
  return !ranges.some((range) => holdsAll(range, [...asked.others, asked.own]));
}

interface Asked {
  readonly own: number;
  /** numbers of the other sizes that so many rows have and that are written with the same letters */
  readonly others: readonly number[];
}

/** null where the others are too few to tell. */
function askedOf(facts: BarFacts, { bars }: SheetFacts, least: number, leastRows: number): Asked | null {
  const own = nominalOf(facts);
  if (own === null || own.number < from || own.number > to || !Number.isInteger(own.number)) return null;
  // a sum that was read as a bar has a number in place of its size
  if (facts.row.length === null || facts.count === null) return null;
  const rows = new Map<number, number>();
  for (const one of bars) {
    const other = nominalOf(one);
    if (other === null || other.letters !== own.letters || other.number === own.number) continue;
    rows.set(other.number, (rows.get(other.number) ?? 0) + 1);
  }
  const others = [...rows].flatMap(([number, count]) => (count < leastRows ? [] : number));
  return others.length < least ? null : { own: own.number, others };
}

/** The number of millimetres by which a size is called, and the letters before it; null of numbers and inches. */
function nominalOf({ row }: BarFacts): { readonly letters: string; readonly number: number } | null {
  const typed = row.sizeTyped?.trim() ?? "";
  const [, letters, number] = /^([^\d#]{0,4}?)\s?(\d{1,2}(?:[.,]\d)?)(?:\s?mm)?$/iu.exec(typed) ?? [];
  if (letters === undefined || number === undefined) return null;
  return { letters: letters.toUpperCase(), number: Number(number.replace(",", ".")) };
}

function holdsAll({ diameters }: RolledRange, wanted: readonly number[]): boolean {
  return wanted.every((diameter) => diameters.includes(diameter));
}
