import Decimal from "decimal.js";

/**
 * The product of two printed numbers, in decimals: 6 x 9.525 is 57.15, where floats give
 * 57.150000000000006.
 */
export function exactProduct(factor: number, value: number): number {
  if (Number.isInteger(factor) && Number.isInteger(value)) return factor * value;
  return new Decimal(factor).times(value).toNumber();
}
