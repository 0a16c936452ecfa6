import Decimal from "decimal.js";
import { fromMillimetres } from "./convert-length";
import type { LengthUnit } from "./length-unit";

const INCHES_IN_A_FOOT = 12;
const SIXTEENTHS = 16;
/** Inches within which a length is a whole sixteenth. */
const CLOSE = 0.0005;

/**
 * A length of `mm` millimetres as text: "1250 mm", or feet and inches: 3'-4 1/2", 9 3/4".
 * Millimetres keep two decimals; inches are sixteenths where that is exact, else three decimals.
 *
 * @example printLength(1028.7, "in") // 3'-4 1/2"
 */
export function printLength(mm: number, unit: LengthUnit): string {
  if (!Number.isFinite(mm)) return String(mm);
  if (unit === "mm") return `${decimals(mm, 2)} mm`;
  const sign = mm < 0 ? "-" : "";
  const sixteenths = Math.abs(fromMillimetres(mm, "in")) * SIXTEENTHS;
  const whole = Math.round(sixteenths);
  const exact = Math.abs(sixteenths - whole) <= CLOSE * SIXTEENTHS;
  const inches = exact ? whole / SIXTEENTHS : Number(decimals(sixteenths / SIXTEENTHS, 3));
  const feet = Math.floor(inches / INCHES_IN_A_FOOT);
  const rest = inches - feet * INCHES_IN_A_FOOT;
  const restText = exact ? fractionText(rest) : decimals(rest, 3);
  // 6'-0 7/8", as it is written in the trade: 6'-7/8" is misread
  const naught = feet > 0 && exact && rest > 0 && rest < 1 ? "0 " : "";
  return feet === 0 ? `${sign}${restText}"` : `${sign}${feet}'-${naught}${restText}"`;
}

function fractionText(inches: number): string {
  const whole = Math.floor(inches);
  let above = (inches - whole) * SIXTEENTHS;
  let below = SIXTEENTHS;
  if (above === 0) return String(whole);
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return whole === 0 ? `${above}/${below}` : `${whole} ${above}/${below}`;
}

function decimals(value: number, places: number): string {
  // a whole number prints as itself: nearly every length of a schedule is one
  if (Number.isSafeInteger(value)) return String(value);
  return new Decimal(value).toDecimalPlaces(places).toString();
}
