import Decimal from "decimal.js";
import { toMillimetres } from "./convert-length";
import type { LengthUnit } from "./length-unit";
import { defineRefusal, type Refusal } from "./refusal";
import { MM_PER_UNIT } from "./unit-table";

const lengthUnread = defineRefusal(
  "length-unread",
  "value",
  `length "{typed}" could not be read: give a number of {unit}, or a text with its unit such as {example}`,
);
const lengthNegative = defineRefusal(
  "length-negative",
  "value",
  `length "{typed}" is below zero: give 0 or more {unit}`,
);
const lengthAmbiguous = defineRefusal(
  "length-ambiguous",
  "value",
  `length "{typed}" can be read as {one} or as {other} {unit}: write it without the separator`,
);
export const inchesBesideFeet = defineRefusal(
  "inches-beside-feet",
  "value",
  `length "{typed}" has {inches} in beside feet, where the inches stay below 12: write one or the other`,
);

const PLAIN_NUMBER = /^\d+(?:\.\d+)?$/;
const MM_IN_UNIT: Readonly<Record<string, number>> = MM_PER_UNIT;
const UNIT_WORDS = new Map<string, string>([
  ...words("mm", "mm millimetre millimetres millimeter millimeters"),
  ...words("cm", "cm centimetre centimetres centimeter centimeters"),
  ...words("dm", "dm"),
  ...words("m", "m mt mts mtr mtrs metre metres meter meters"),
  ...words("in", `in ins in. inch inches "`),
  ...words("ft", "ft ft. foot feet '"),
]);
/** Longer texts are no length. */
const LONGEST = 100;
const VULGAR_FRACTIONS = /[¼-¾⅐-⅞]/g;
const INCHES_IN_A_FOOT = 12;

/**
 * Millimetres of a length: a number is in `unit`, a text may carry a unit of its own:
 * `1250`, "1250 mm", "1.25 m", "45 cm", "3'-4 1/2\"", "40 1/2 in", "16in". Thousands separators
 * are read where only one reading is sensible. Refuses what is no length, and lengths below zero.
 *
 * @example parseLength("3'-4 1/2\"", "in") // 1028.7
 */
export function parseLength(typed: string | number, unit: LengthUnit): number | Refusal {
  if (typeof typed === "number") {
    if (!Number.isFinite(typed)) return unread(typed, unit);
    if (typed < 0) return lengthNegative({ typed, unit });
    const length = toMillimetres(typed, unit);
    return Number.isFinite(length) ? length : unread(typed, unit);
  }
  if (typed.length > LONGEST) return unread(typed, unit);
  const text = typed.trim();
  const length = PLAIN_NUMBER.test(text)
    ? toMillimetres(Number(text), unit)
    : parseText(plainCharacters(text), typed, unit);
  // a number of 309 digits is more than any number holds
  return length === Number.POSITIVE_INFINITY ? unread(typed, unit) : length;
}

function parseText(text: string, typed: string, unit: LengthUnit): number | Refusal {
  if (/^[-−–]\s*[\d.]/.test(text)) return lengthNegative({ typed, unit });
  const feetAndInches = /^(.+?)\s*(?:'|ft\.?|feet|foot)\s*-?\s*(\d.*?)\s*(?:"|in\.?|ins|inch|inches)?$/i.exec(
    text,
  );
  if (feetAndInches !== null) return readFeetAndInches(feetAndInches, typed, unit);
  const parts = /^(.*?\d\.?)\s*([a-z]+\.?|["'])?$/i.exec(text);
  const number = parts?.[1];
  if (number === undefined) return unread(typed, unit);
  const name = parts?.[2] === undefined ? unit : UNIT_WORDS.get(parts[2].toLowerCase().replace(/\.$/, ""));
  if (name === undefined) return unread(typed, unit);
  const value = readNumber(number, name);
  if (value === null) return unread(typed, unit);
  if (Array.isArray(value)) return lengthAmbiguous({ typed, one: value[0], other: value[1], unit: name });
  return value.times(MM_IN_UNIT[name] ?? "1").toNumber();
}

function readFeetAndInches(parts: RegExpExecArray, typed: string, unit: LengthUnit): number | Refusal {
  const feet = readNumber(parts[1] ?? "", "ft");
  const inches = readNumber(parts[2] ?? "", "in");
  if (!(feet instanceof Decimal) || !(inches instanceof Decimal)) return unread(typed, unit);
  if (inches.gte(INCHES_IN_A_FOOT)) return inchesBesideFeet({ typed, inches: inches.toString() });
  return feet.times(INCHES_IN_A_FOOT).plus(inches).times(MM_IN_UNIT["in"]!).toNumber();
}

/** A decimal; two readings where the separator leaves both open; null where it is no number. */
function readNumber(text: string, unit: string): Decimal | [string, string] | null {
  if (/^\d*\.?\d+$|^\d+\.$/.test(text)) return new Decimal(text);
  const fraction = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (fraction !== null) {
    const below = new Decimal(fraction[3]!);
    return below.isZero() ? null : new Decimal(fraction[1] ?? "0").plus(new Decimal(fraction[2]!).div(below));
  }
  if (/^\d{1,3}(?:[ ,]\d{3})*(?:\.\d+)?$/.test(text)) return readGroups(text, unit);
  if (/^\d{1,3}(?:\.\d{3})+,\d+$/.test(text) || /^\d{1,3}(?:[. ]\d{3}){2,}(?:,\d+)?$/.test(text)) {
    return new Decimal(text.replace(/[. ]/g, "").replace(",", "."));
  }
  if (/^\d{1,3}(?: \d{3})*,\d+$|^\d+,\d+$/.test(text))
    return new Decimal(text.replaceAll(" ", "").replace(",", "."));
  return null;
}

/** "12,000" is twelve thousand mm (or inches), but of metres it may be twelve. */
function readGroups(text: string, unit: string): Decimal | [string, string] {
  const joined = text.replace(/[ ,]/g, "");
  const onlyOneComma = /^\d{1,3},\d{3}$/.test(text);
  const ambiguous = onlyOneComma && (unit === "m" || unit === "cm" || unit === "dm");
  return ambiguous ? [joined, text.replace(",", ".")] : new Decimal(joined);
}

function plainCharacters(text: string): string {
  return text
    .replace(VULGAR_FRACTIONS, (mark) => ` ${mark.normalize("NFKD")}`)
    .replaceAll("\u2044", "/")
    .replace(/\u2032\u2032|''|[\u2033\u201C\u201D\u201E]/g, '"')
    .replace(/[\u2032\u2018\u2019\u00B4`]/g, "'")
    .replace(/[\u00A0\u2007\u2009\u202F]/g, " ")
    .replace(/[\u2010-\u2015]/g, "-")
    .replace(/\s+/g, " ")
    .trim();
}

function unread(typed: string | number, unit: LengthUnit): Refusal {
  const example = unit === "mm" ? `1250, "1250 mm" or "1.25 m"` : `40.5, "40 1/2 in" or "3'-4 1/2"""`;
  return lengthUnread({ typed, unit: unit === "mm" ? "mm" : "inches", example });
}

function words(unit: string, list: string): [string, string][] {
  return list.split(" ").map((word) => [word, unit]);
}
