import type { GuessCode } from "../bar-row";
import { LONGEST_VALUE, shortened } from "./longest-text";
import { MOST_BARS } from "./most-bars";
import { type CommaUse, lookalikeDigits, readNumberText } from "./read-number-text";
import { isDitto, isWord, plainWords } from "./row-words";

/** What a text in a count column says. */
export type CountReading =
  | {
      readonly is: "value";
      readonly value: number;
      /** written as members x bars each */
      readonly members: number | null;
      readonly each: number | null;
      /** a size written behind the count: "T20" of 2x3T20 */
      readonly size: string | null;
      readonly guess: GuessCode | null;
      readonly asks: boolean;
      readonly reason: string;
    }
  | { readonly is: "ditto" }
  | { readonly is: "same-as"; readonly mark: string }
  | { readonly is: "blank" }
  | { readonly is: "unread"; readonly reason: string };

const WITH_UNIT = /^(\d[\d, ]*(?:\.0+)?)\s*\(?([^\d\s()]+(?:\s[^\d\s()]+)?)\)?$/u;
/** "1.200", "12.000" */
const POINT_GROUPS = /^[1-9]\d{0,2}(?:\.\d{3})+$/;
const PRODUCT = /^(\d+)\s*[x*]\s*(\d+)(?:\s*([^\d\s].*))?$/i;
/** "4 x 12 = 48" */
const PRODUCT_MADE = /^(\d+)\s*[x*]\s*(\d+)\s*=\s*(\d+)$/i;
const SUM = /^(\d+(?:\s*\+\s*\d+)+)(?:\s*([^\d\s+].*))?$/;
const SIZE_BEHIND = /^(?:[a-z]{1,2}|\u00d8|#)\s*\d+(?:\s*mm)?$/i;
const CALL_OFF = /^(\d{1,4})\s*((?:[a-z]{1,2}|\u00d8)\s*\d{1,2}\s*-\s*\d+[a-z]?(?:\s*-\s*\d+)?)$/i;
/** "12 @ 200", "12 Ø 150 c/c": bars at a spacing */
const AT_SPACING =
  /^(\d{1,4})\s*(?:nos?\.?|pcs|stk)?\s*(?:@|at)\s*\d{2,4}\s*(?:mm)?\s*(?:c\/c|crs|ctrs?|centres|centers)?$/i;
const RATE = /\d\s*(?:\/|per)\s*(?:m2|m\^2|m3|m|sqm|sq\.?\s*m)\b|@/i;
const SAME_AS = /^(?:same as|as)\s+(?:mark\s+)?([\p{L}\d][\p{L}\d\-/.]*)$/iu;

/**
 * Reads a cleaned text of a count column: `8 Nos`, `4 x 12`, `2+3`, `2x3T20`. Products and sums are
 * worked out, never written together. `pointsGroup`: commas part the decimals of the list, so points part thousands. `words` say what is
 * counted besides those that are known. A rate such as 9/m2 is no count.
 *
 * @example readCountText("4 x 12", "thousands") // value 48, members 4, each 12
 */
export function readCountText(
  text: string,
  comma: CommaUse,
  pointsGroup = false,
  words: readonly string[] = [],
): CountReading {
  const plain = plainWords(text);
  if (plain === "" || isWord("blank", plain)) return { is: "blank" };
  if (isDitto(plain)) return { is: "ditto" };
  if (text.length > LONGEST_VALUE) return noCount(text);
  // where commas part the decimals a point parts thousands: no count has a fraction
  if (POINT_GROUPS.test(text)) return pointed(text, pointsGroup);
  const number = readNumberText(text.replace(/^\((.+)\)$/, "$1"), comma);
  if (number !== null) return whole(number, text);
  const spaced = AT_SPACING.exec(text);
  if (spaced !== null) return whole(Number(spaced[1]), text);
  if (RATE.test(text))
    return {
      is: "unread",
      reason: `"${shortened(text)}" is a rate or a spacing, not a count: an area or a width is needed`,
    };
  return (
    calledOff(text) ??
    product(text) ??
    productMade(text) ??
    sum(text) ??
    withUnit(text, words) ??
    sameAs(text) ??
    lookalike(text) ??
    noCount(text)
  );
}

function noCount(text: string): CountReading {
  return { is: "unread", reason: `"${shortened(text)}" is no count` };
}

/** "78Y16-01-200": bars, size, mark and spacing, where no column stands for the size. */
function calledOff(text: string): CountReading | null {
  const parts = CALL_OFF.exec(text);
  return parts === null ? null : counted(Number(parts[1]), { size: parts[2] ?? null });
}

function product(text: string): CountReading | null {
  const parts = PRODUCT.exec(text);
  if (parts === null) return null;
  const size = behind(parts[3]);
  if (size === undefined) return null;
  const members = Number(parts[1]);
  const each = Number(parts[2]);
  return counted(members * each, { members, each, size });
}

/** A product with what it makes. Where it makes another number nobody can say which of the three is meant. */
function productMade(text: string): CountReading | null {
  const parts = PRODUCT_MADE.exec(text);
  if (parts === null) return null;
  const [members, each, made] = parts.slice(1).map(Number) as [number, number, number];
  if (members * each === made) return counted(made, { members, each });
  return { is: "unread", reason: `"${shortened(text)}" does not make ${made}, but ${members * each}` };
}

function sum(text: string): CountReading | null {
  const parts = SUM.exec(text);
  if (parts === null) return null;
  const size = behind(parts[2]);
  if (size === undefined) return null;
  const total = (parts[1] ?? "").split("+").reduce((so, part) => so + Number(part), 0);
  return counted(total, { size });
}

function behind(text: string | undefined): string | null | undefined {
  if (text === undefined || isWord("count-unit", plainWords(text))) return null;
  return SIZE_BEHIND.test(text) ? text : undefined;
}

function withUnit(text: string, words: readonly string[]): CountReading | null {
  const parts = WITH_UNIT.exec(text);
  if (parts === null) return null;
  const number = readNumberText((parts[1] ?? "").trim(), "thousands");
  if (number === null) return null;
  const word = plainWords(parts[2] ?? "");
  if (isWord("count-unit", word) || words.includes(word)) return whole(number, text);
  if (!isWord("count-set", word)) return null;
  const pairs = /^(?:p|jeux?$)/.test(word) ? number * 2 : number;
  return counted(pairs, {
    guess: "set-or-pair",
    asks: true,
    reason: `"${shortened(text)}" may be ${number} or ${number * 2} bars: how many bars make a ${word.replace(/s$/, "")}`,
  });
}

function sameAs(text: string): CountReading | null {
  const match = SAME_AS.exec(text);
  return match === null ? null : { is: "same-as", mark: match[1] ?? "" };
}

function lookalike(text: string): CountReading | null {
  const digits = lookalikeDigits(text);
  const number = digits === null ? null : readNumberText(digits, "thousands");
  if (number === null || !Number.isInteger(number)) return null;
  return counted(number, {
    guess: "lookalike-digit",
    asks: true,
    reason: `"${shortened(text)}" may be ${digits}: a letter stands where a digit belongs`,
  });
}

/** A point between thousands, or decimals that are all nought: 1.000 is as likely one as a thousand. */
function pointed(text: string, pointsGroup: boolean): CountReading {
  const grouped = Number(text.replaceAll(".", ""));
  const number = Number(text);
  if (pointsGroup || !Number.isInteger(number)) return whole(pointsGroup ? grouped : number, text);
  return counted(number, {
    guess: "decimal-comma",
    asks: true,
    reason: `"${text}" may be ${number} or ${grouped} bars: write it without the point`,
  });
}

/** A count has to be a whole number from 0; anything else is unread and says so. */
function whole(number: number, typed: string): CountReading {
  if (Number.isSafeInteger(number) && number >= 0) return counted(number, {});
  const what = number < 0 ? "is negative" : "is no whole number";
  return { is: "unread", reason: `${shortened(typed)} ${what}, so it is no count of bars` };
}

interface Extra {
  readonly members?: number;
  readonly each?: number;
  readonly size?: string | null;
  readonly guess?: GuessCode;
  readonly asks?: boolean;
  readonly reason?: string;
}

function counted(value: number, extra: Extra): CountReading {
  if (!(value < MOST_BARS)) return { is: "unread", reason: "the count is too large" };
  return {
    is: "value",
    value,
    members: extra.members ?? null,
    each: extra.each ?? null,
    size: extra.size ?? null,
    guess: extra.guess ?? null,
    asks: extra.asks ?? false,
    reason: extra.reason ?? "",
  };
}
