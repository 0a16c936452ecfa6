import { unitOfWord } from "./unit-behind";

const PLAIN_ASCII = /^[\x21-\x7e](?:[\x20-\x7e]*[\x21-\x7e])?$/;
const DIGIT_BASES = [
  0x0660, // Arabic-Indic
  0x06f0, // extended Arabic-Indic
  0x0966, // Devanagari
  0x09e6, // Bengali
  0x0a66, // Gurmukhi
  0x0ae6, // Gujarati
  0x0be6, // Tamil
  0x0c66, // Telugu
  0x0ce6, // Kannada
  0x0e50, // Thai
  0xff10, // full width
] as const;
const REPLACED: ReadonlyMap<string, string> = new Map([
  ["\u2018", "'"],
  ["\u2019", "'"],
  ["\u2032", "'"],
  ["\u00b4", "'"],
  ["\u02b9", "'"],
  ["\u201c", '"'],
  ["\u201d", '"'],
  ["\u2033", '"'],
  ["\u02ba", '"'],
  ["\u3003", '"'],
  ["\u2010", "-"],
  ["\u2011", "-"],
  ["\u2012", "-"],
  ["\u2013", "-"],
  ["\u2014", "-"],
  ["\u2212", "-"],
  ["\u00d7", "x"],
  ["\u2715", "x"],
  ["\u2044", "/"],
  ["\u066b", "."],
  ["\u066c", ","],
  ["\u060c", ","],
  ["\uff0c", ","],
  ["\u3000", " "],
  ["\u2205", "\u00d8"],
  ["\u00f8", "\u00d8"],
  ["\u2300", "\u00d8"],
  ["\u03c6", "\u00d8"],
  ["\u03a6", "\u00d8"],
  ["\u03d5", "\u00d8"],
]);
const LONGEST_WITH_UNIT = 60;
/** the letter EF stands for a diameter, but not within a word */
const CYRILLIC_DIAMETER = /(?<!\p{L})[\u0424\u0444](?!\p{L})/gu;
const FRACTIONS: ReadonlyMap<string, string> = new Map([
  ["\u00bc", "1/4"],
  ["\u00bd", "1/2"],
  ["\u00be", "3/4"],
  ["\u2153", "1/3"],
  ["\u2154", "2/3"],
  ["\u215b", "1/8"],
  ["\u215c", "3/8"],
  ["\u215d", "5/8"],
  ["\u215e", "7/8"],
]);
/** units in the letters of other scripts: "5,75 м", "200 مم" */
const NUMBER_AND_UNIT = /^([\d.,+x*()\s-]*\d\)?)\s*([^\x20-\x7e]{1,8}(?: [^\x20-\x7e]{1,8})?)\.?$/u;
const INVISIBLE = /[\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff\u00ad\u061c]/g;

/**
 * The text with outer blanks and a leading apostrophe gone and every digit, blank, prime, dash and
 * vulgar fraction in its plain form; every diameter sign becomes Ø, and a unit of another script behind a number its
 * Latin sign. Letters keep their case.
 *
 * @example cleanText("\u00a03\u2032\u20134\u00bd\u2033 ") // "3'-4 1/2\""
 */
export function cleanText(typed: string): string {
  if (PLAIN_ASCII.test(typed))
    return typed.charCodeAt(0) === 39 && typed.length > 1 ? withoutApostrophe(typed) : typed;
  const signs: string[] = [];
  for (const sign of typed.replace(INVISIBLE, "")) signs.push(plainSign(sign, signs[signs.length - 1] ?? ""));
  const text = withLatinUnit(
    signs
      .join("")
      .replace(/\s+/g, (gap) => (gap.length > 1 ? "  " : " "))
      .replace(CYRILLIC_DIAMETER, "\u00d8")
      .trim(),
  );
  return text.charCodeAt(0) === 39 && text.length > 1 ? withoutApostrophe(text) : text;
}

function withLatinUnit(text: string): string {
  if (text.length > LONGEST_WITH_UNIT || !/\d/.test(text)) return text;
  const [, number = "", word = ""] = NUMBER_AND_UNIT.exec(text) ?? [];
  const unit = unitOfWord(word);
  return unit === undefined ? text : `${number} ${unit}`;
}

// a lone quote mark is a ditto, '' too; a quote before a value is a typed-as-text mark
function withoutApostrophe(text: string): string {
  return text.charCodeAt(1) === 39 ? text : text.slice(1).trim();
}

function endsInDigit(text: string): boolean {
  const last = text.charCodeAt(text.length - 1);
  return last >= 48 && last <= 57;
}

function plainSign(sign: string, before: string): string {
  const code = sign.codePointAt(0) ?? 0;
  if (code < 0x7f && code >= 0x20) return sign;
  const fraction = FRACTIONS.get(sign);
  if (fraction !== undefined) return endsInDigit(before) ? ` ${fraction}` : fraction;
  const replaced = REPLACED.get(sign);
  if (replaced !== undefined) return replaced;
  for (const base of DIGIT_BASES) {
    if (code >= base && code <= base + 9) return String(code - base);
  }
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0);
  return /\s/u.test(sign) ? " " : sign;
}
