import { MM_PER_UNIT } from "../../units/unit-table";
import type { GuessCode } from "../bar-row";
import { BEYOND_ANY_BAR } from "./beyond-any-bar.data";
import { dateTyped } from "./date-typed";
import { type LengthColumn, MOST_MM } from "./read-length-text";

export interface OddNumberPlace {
  readonly column: LengthColumn;
  readonly isDate: boolean;
  readonly datesFrom1904: boolean;
  readonly shown: string | undefined;
  readonly isDim: boolean;
  /** a column of the bars' lengths */
  readonly isLength: boolean;
  readonly inInches: boolean;
}

/** `unit-error`: looks written in another unit than its column; the row has to settle it. mm. */
export type OddNumber =
  | { readonly is: "unit-error"; readonly value: number; readonly onlyByMass?: true }
  | { readonly is: "unread"; readonly reason: string }
  | {
      readonly is: "value";
      readonly value: number;
      readonly free: boolean;
      readonly guess: GuessCode | null;
      readonly asks: boolean;
      readonly reason: string;
    };

const INCH = MM_PER_UNIT.in;
const FOOT = MM_PER_UNIT.ft;
const LEAST_MM = 20;
const LEAST_WHOLE_MM = 1;
/** Among metres a number above it may be millimetres; one below it is as typed, however long that is. */
const LEAST_MIXED_MM = 300;
/** No bar of a list in centimetres is as short; 3.2 and 11.75 are the metres of common bars. */
const LEAST_CM = 10;
const LEAST_CM_WITH_DECIMALS = 18;

/** A number that is no plain length of its column: a date, a negative, an error of unit, a bare 8 among feet. */
export function readOddNumber(number: number, place: OddNumberPlace): OddNumber {
  const { column } = place;
  if (!Number.isFinite(number)) return { is: "unread", reason: "the number is not finite" };
  if (place.isDate) return dateAsLength(number, place);
  if (number < 0) return negative(number, place);
  if (number === 0) return value(0);
  if (column.feetInches) {
    const reason = `${number} has no mark among feet and inches: ${number} in or ${number} ft`;
    return value(number * INCH, { guess: "feet-or-inches", asks: true, reason });
  }
  if (column.factor === 1 && number < LEAST_MM) {
    if (place.isDim && Number.isInteger(number) && number >= LEAST_WHOLE_MM) return value(number);
    return { is: "unit-error", value: number * 1000 };
  }
  if (column.factor === 1000 && number >= LEAST_MIXED_MM && number <= MOST_MM)
    return { is: "unit-error", value: number };
  if (place.isLength && column.factor === 10 && number < leastOfCentimetres(number))
    return { is: "unit-error", value: number * 1000 };
  if (place.isLength && number * column.factor > BEYOND_ANY_BAR.value && number * column.factor <= MOST_MM)
    return { is: "unit-error", value: number * column.factor, onlyByMass: true };
  return value(number * column.factor);
}

function leastOfCentimetres(number: number): number {
  return Number.isInteger(number) ? LEAST_CM : LEAST_CM_WITH_DECIMALS;
}

function negative(number: number, { column, shown }: OddNumberPlace): OddNumber {
  const size = -number * column.factor;
  if (shown !== undefined && /^\s*\(.*\)\s*$/.test(shown)) {
    const reason = `${shown.trim()} is a free dimension in brackets, held as ${number}`;
    const reading = value(size, { guess: "free-by-format", reason });
    return reading.is === "value" ? { ...reading, free: true } : reading;
  }
  return value(size, {
    guess: "negative-dimension",
    asks: true,
    reason: `${number} is below nought, and no length is: ${-number} may be meant`,
  });
}

function dateAsLength(serial: number, { column, inInches, datesFrom1904 }: OddNumberPlace): OddNumber {
  const { month, day } = dateTyped(serial, datesFrom1904);
  if (!inInches && !column.feetInches) {
    const reason = `a date stands here: ${month}-${day} or ${month}/${day} was typed and turned into a date; type it as text`;
    return { is: "unread", reason };
  }
  const isFraction = !column.feetInches && [2, 4, 8, 16].includes(day) && month % 2 === 1 && month < day;
  const mm = isFraction ? (month / day) * INCH : month * FOOT + day * INCH;
  const said = isFraction ? `${month}/${day} in` : `${month} ft ${day} in`;
  if (!isFraction && day >= 12)
    return { is: "unread", reason: `a date stands here, and ${day} are too many inches beside ${month} ft` };
  return value(mm, {
    guess: "date-was-fraction",
    asks: true,
    reason: `a date stands here: ${month}-${day} was typed and turned into one; ${said} may be meant`,
  });
}

function value(mm: number, extra: { guess?: GuessCode; asks?: boolean; reason?: string } = {}): OddNumber {
  if (!(mm <= MOST_MM)) return { is: "unread", reason: "the number is too large for a length" };
  const { guess = null, asks = false, reason = "" } = extra;
  return { is: "value", value: Math.round(mm * 1e6) / 1e6, free: false, guess, asks, reason };
}
