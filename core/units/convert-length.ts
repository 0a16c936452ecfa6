import Decimal from "decimal.js";
import type { LengthUnit } from "./length-unit";
import { MM_PER_UNIT } from "./unit-table";

/** Digits that a computed length keeps when it is shown in another unit; beyond them is float noise. */
const DIGITS = 13;

/**
 * Millimetres of a length in `unit`. The product is taken in decimals: 0.375 in is 9.525 mm, where
 * floats give 9.524999999999999.
 */
export function toMillimetres(length: number, unit: LengthUnit): number {
  return unit === "mm" || !Number.isFinite(length)
    ? length
    : new Decimal(length).times(MM_PER_UNIT.in).toNumber();
}

/** A length of `mm` millimetres as a number in `unit`. */
export function fromMillimetres(mm: number, unit: LengthUnit): number {
  if (unit === "mm" || !Number.isFinite(mm)) return mm;
  return new Decimal(mm).div(MM_PER_UNIT.in).toSignificantDigits(DIGITS).toNumber();
}
