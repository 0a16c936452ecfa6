import type { ColumnUnit } from "../column-unit";
import { HEADER_UNITS } from "../header/header-units.data";
import { oneForm } from "../header/one-form";

const UNITS: ReadonlyMap<string, ColumnUnit> = new Map(HEADER_UNITS.rows);
/** a number and one or two words behind it, with their points and the marks of an abbreviation */
const NUMBER_WITH_WORD = /^(.*\d)\s*([\p{L}\p{M}][\p{L}\p{M}\s.\u05f3\u05f4"']*)$/u;
const MARKS = /[.\u05f3\u05f4"']/g;
const OF_LENGTH: ReadonlySet<string> = new Set(["mm", "cm", "m"]);

/**
 * The text with the unit behind its number as it is written in Latin letters: of whichever language the abbreviation
 * is, with a point behind it or without. Any other text is given back.
 *
 * @example latinUnit("2.10 ม.") // "2.10 m"
 */
export function latinUnit(text: string): string {
  const [, number, word] = NUMBER_WITH_WORD.exec(text) ?? [];
  if (number === undefined || word === undefined) return text;
  const unit = unitOfWord(word);
  return unit !== undefined && OF_LENGTH.has(unit) ? `${number} ${unit}` : text;
}

/** The unit that a word or an abbreviation of any language stands for. */
export function unitOfWord(word: string): ColumnUnit | undefined {
  const plain = oneForm(word.toLowerCase());
  const joined = UNITS.get(plain.replace(MARKS, "").trim());
  return joined ?? UNITS.get(plain.replace(MARKS, " ").replace(/\s+/g, " ").trim());
}
