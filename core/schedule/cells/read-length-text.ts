import { inchesBesideFeet, parseLength } from "../../units/parse-length";
import { isRefusal, refusalText } from "../../units/refusal";
import { MM_PER_UNIT } from "../../units/unit-table";
import type { GuessCode } from "../bar-row";
import { LONGEST_VALUE, shortened } from "./longest-text";
import { type CommaUse, lookalikeDigits, readNumberText } from "./read-number-text";
import { isDitto, isWord } from "./row-words";
import { latinUnit } from "./unit-behind";

/** How the column that a text stands in is to be taken. */
export interface LengthColumn {
  /** mm in one of the column's unit */
  readonly factor: number;
  readonly comma: CommaUse;
  /** Feet and inches stand in this column, so 12-06 is 12 ft 6 in and a bare 8 is neither for sure. */
  readonly feetInches: boolean;
}

/** What a text in a length column says; lengths in mm. */
export type LengthReading =
  | {
      readonly is: "value";
      readonly value: number;
      readonly free: boolean;
      readonly radius: boolean;
      readonly lap: number | null;
      /** a number alone, taken in the column's unit */
      readonly plain: boolean;
      readonly guess: GuessCode | null;
      readonly asks: boolean;
      readonly reason: string;
    }
  | {
      readonly is: "varying";
      readonly from: number | null;
      readonly to: number | null;
      readonly step: number | null;
    }
  | { readonly is: "ditto" }
  | { readonly is: "same-as"; readonly mark: string }
  | { readonly is: "blank" }
  | { readonly is: "unread"; readonly reason: string };

/** A thousand kilometres: above it no number is a length. */
export const MOST_MM = 1e9;
const INCH = MM_PER_UNIT.in;
const FOOT = MM_PER_UNIT.ft;
const WITH_UNIT =
  /\d\s*(?:mm|cm|dm|m|mts?|mtrs?|met(?:re|er)s?|'|''|"|in|ins|inch|inches|ft|feet|foot)\.?$|\d\s*(?:'|ft|feet|foot)/i;
const GROUP_OF_MM = /^(\d{1,2})\.(\d{3})(?=\s*mm\.?$)/i;
const DASHED = /^(\d+)\s*-\s*(\d+(?:\.\d+)?)(?:[\s-]+(\d+)\/(\d+))?\s*"?$/;
const MIXED = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/;
const RANGE =
  /^([\d.,' ]*\d)\s*(?:mm|m)?\s*(?:-|to|~|\.{2,3}|bis|a|thru|through)\s*([\d.,' ]*\d)\s*(?:mm|m)?(?:[\s,;(]*(?:in\s+)?(?:steps?(?:\s+of)?|by|@|incs?|increments?(?:\s+of)?)\s*([\d.,]*\d)\s*(?:mm)?\)?)?$/i;
const LAP_ADDED =
  /^([\d.,' ]*\d)\s*(?:mm)?\s*\+\s*(?:\(?\s*laps?\s*)?([\d.,' ]*\d)\s*(?:mm)?\s*(?:\(?\s*(?:laps?)?\s*\)?)$/i;
const LAP_INSIDE =
  /^([\d.,' ]*\d)\s*(?:mm)?\s*\(?\s*(?:incl?\.?|including|includes)\s*(?:laps?)\s*(?:of\s*)?([\d.,' ]*\d)?\s*(?:mm)?\)?$/i;
const SAME_AS = /^(?:same as|as|see|like)\s+(?:mark\s+|bar\s+)?([\p{L}\d][\p{L}\d\-/.]*)$/iu;
const RADIUS = /^R\s*=?\s*(?=[\d(])(.+)$/i;

/**
 * Reads a cleaned text of a length column: numbers with any separators, a unit of its own, feet and
 * inches, a bracketed free dimension, R1500, a varying range, a length with its lap.
 *
 * @example readLengthText("3'-4 1/2\"", { factor: 1, comma: "thousands", feetInches: false }) // 1028.7
 */
export function readLengthText(text: string, column: LengthColumn): LengthReading {
  const plain = text.toLowerCase();
  if (text === "" || isWord("blank", plain)) return { is: "blank" };
  if (isDitto(plain)) return { is: "ditto" };
  if (text.length > LONGEST_VALUE) return noLength(text);
  const { bare, free, radius } = unwrapped(text);
  if (!free && !radius) return readBare(bare, column);
  const inside = readBare(bare, column);
  return inside.is === "value" ? { ...inside, free: inside.free || free, radius } : inside;
}

/** "L=270", "l = 4.35": as many lists write a length in the cell (common practice) */
const LENGTH_LETTER = /^l\s?=\s?(\S.*)$/i;

/** The text without its brackets and without the R before a radius, as often as they stand around it. */
function unwrapped(text: string): { bare: string; free: boolean; radius: boolean } {
  let bare = text;
  let free = false;
  let radius = false;
  for (;;) {
    const inBrackets = /^[([].*[)\]]$/.test(bare) ? bare.slice(1, -1).trim() : "";
    const behindR = RADIUS.exec(bare)?.[1] ?? "";
    const behindL = LENGTH_LETTER.exec(bare)?.[1] ?? "";
    if (inBrackets !== "") free = true;
    else if (behindR !== "") radius = true;
    else if (behindL === "") return { bare, free, radius };
    bare = [inBrackets, behindR, behindL].find((inside) => inside !== "") ?? bare;
  }
}

function readBare(text: string, column: LengthColumn): LengthReading {
  const plain = text.toLowerCase();
  if (text === "" || isWord("blank", plain)) return { is: "blank" };
  if (isDitto(plain)) return { is: "ditto" };
  const number = readNumberText(text, column.comma);
  if (number !== null) return ofColumn(number, column);
  return (
    dashedFeet(text, column) ??
    withUnit(latinUnit(text), column) ??
    withLap(text, column) ??
    varying(text, column) ??
    sameAs(text) ??
    lookalike(text, column) ??
    noLength(text)
  );
}

function noLength(text: string): LengthReading {
  return { is: "unread", reason: `"${shortened(text)}" is no length` };
}

function ofColumn(number: number, column: LengthColumn): LengthReading {
  if (number < 0) {
    return value(-number * column.factor, {
      guess: "negative-dimension",
      asks: true,
      reason: `${number} is below nought, and no length is: ${-number} may be meant`,
    });
  }
  if (column.feetInches && number !== 0) {
    return value(number * INCH, {
      guess: "feet-or-inches",
      asks: true,
      reason: `${number} has no mark among feet and inches: ${number} in or ${number} ft`,
    });
  }
  return value(number * column.factor, { plain: true });
}

function withUnit(text: string, column: LengthColumn): LengthReading | null {
  if (!WITH_UNIT.test(text)) return null;
  const negative = /^-\s*(?=\d)/.exec(text);
  const unsigned = negative === null ? text : text.slice(negative[0].length);
  // no bar is written to the thousandth of a mm
  const bare = unsigned.replace(GROUP_OF_MM, "$1$2");
  const length = parseLength(bare, column.factor === INCH || column.feetInches ? "in" : "mm");
  if (!isRefusal(length)) {
    if (negative === null) return value(length);
    return value(length, {
      guess: "negative-dimension",
      asks: true,
      reason: `"${shortened(text)}" is below nought, and no length is: "${shortened(bare)}" may be meant`,
    });
  }
  return varying(text, column) ?? withLap(text, column) ?? { is: "unread", reason: refusalText(length) };
}

function dashedFeet(text: string, column: LengthColumn): LengthReading | null {
  const dashed = DASHED.exec(text);
  const sure = column.feetInches || dashed?.[3] !== undefined || text.endsWith('"');
  if (dashed !== null && sure) {
    const inches = Number(dashed[2]) + fraction(dashed[3], dashed[4]);
    if (inches < FOOT / INCH) return value(Number(dashed[1]) * FOOT + inches * INCH);
    // among feet and inches no bare numbers make a range
    if (column.feetInches) {
      return {
        is: "unread",
        reason: refusalText(inchesBesideFeet({ typed: text, inches: dashed[2] ?? "" })),
      };
    }
  }
  const mixed = MIXED.exec(text);
  if (mixed !== null && (column.feetInches || column.factor === INCH) && Number(mixed[3]) > 0) {
    return value((Number(mixed[1] ?? 0) + fraction(mixed[2], mixed[3])) * INCH);
  }
  return null;
}

function fraction(above: string | undefined, below: string | undefined): number {
  if (above === undefined || below === undefined) return 0;
  return Number(below) > 0 ? Number(above) / Number(below) : 0;
}

function withLap(text: string, column: LengthColumn): LengthReading | null {
  const added = LAP_ADDED.exec(text);
  if (added !== null) {
    const bar = readNumberText((added[1] ?? "").trim(), column.comma);
    const lap = readNumberText((added[2] ?? "").trim(), column.comma);
    if (bar === null || lap === null) return null;
    const total = (bar + lap) * column.factor;
    if (/lap/i.test(text)) return value(total, { lap: lap * column.factor });
    return value(total, {
      guess: "sum-of-parts",
      asks: true,
      reason: `"${shortened(text)}" was taken as a sum`,
    });
  }
  const inside = LAP_INSIDE.exec(text);
  if (inside === null) return null;
  const bar = readNumberText((inside[1] ?? "").trim(), column.comma);
  const lap = inside[2] === undefined ? 0 : readNumberText(inside[2].trim(), column.comma);
  return bar === null || lap === null ? null : value(bar * column.factor, { lap: lap * column.factor });
}

function varying(text: string, column: LengthColumn): LengthReading | null {
  if (/^var(?:y|ies|ying|iable|\.)?(?:\s+lengths?)?$/i.test(text))
    return { is: "varying", from: null, to: null, step: null };
  const range = RANGE.exec(text);
  if (range === null) return null;
  const factor = /\dm?\s*m\b/i.test(text) && !/mm/i.test(text) ? 1000 : /mm/i.test(text) ? 1 : column.factor;
  const from = readNumberText((range[1] ?? "").trim(), column.comma);
  const to = readNumberText((range[2] ?? "").trim(), column.comma);
  const step = range[3] === undefined ? null : readNumberText(range[3], column.comma);
  if (from === null || to === null || from === to || Math.min(from, to) * factor < 50) return null;
  return { is: "varying", from: from * factor, to: to * factor, step: step === null ? null : step * factor };
}

function sameAs(text: string): LengthReading | null {
  const match = SAME_AS.exec(text);
  return match === null ? null : { is: "same-as", mark: match[1] ?? "" };
}

function lookalike(text: string, column: LengthColumn): LengthReading | null {
  const digits = lookalikeDigits(text);
  const number = digits === null ? null : readNumberText(digits, column.comma);
  if (number === null) return null;
  return value(number * column.factor, {
    guess: "lookalike-digit",
    asks: true,
    reason: `"${shortened(text)}" may be ${digits}: a letter stands where a digit belongs`,
  });
}

interface Extra {
  readonly lap?: number;
  readonly plain?: boolean;
  readonly guess?: GuessCode;
  readonly asks?: boolean;
  readonly reason?: string;
}

function value(mm: number, extra: Extra = {}): LengthReading {
  if (!(mm <= MOST_MM)) return { is: "unread", reason: "the number is too large for a length" };
  return {
    is: "value",
    // decimal texts times 1000 leave the last bit off
    value: Math.round(mm * 1e6) / 1e6,
    free: false,
    radius: false,
    lap: extra.lap ?? null,
    plain: extra.plain ?? false,
    guess: extra.guess ?? null,
    asks: extra.asks ?? false,
    reason: extra.reason ?? "",
  };
}
