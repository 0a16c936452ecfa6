import Decimal from "decimal.js";

/** Up: to the next multiple, a multiple stays. Nearest: half a step goes up. */
export type RoundingDirection = "up" | "nearest";

/**
 * `value` rounded to a multiple of `step` where floats can decide it; NaN where `value` lies within
 * `error` of a place where the answer changes, so that only exact arithmetic can (`roundExactly`).
 * A step of 0 leaves the value as it is.
 *
 * Why this is exact: let v be the exact value and |value - v| <= error. The quotient q = value / step,
 * or q = value / step + 1/2 for the nearest, is computed with a relative error of at most EPSILON / 2
 * by division and another by addition, so the exact quotient lies within
 * e = error / step + EPSILON (|q| + 1) of it. The rounded multiple changes only where the exact quotient
 * is a whole number. If the whole number n nearest to q is further away than e, no whole number lies
 * between q and the exact quotient, both have the same ceiling (floor), and that ceiling is the answer.
 * A whole value without error over a whole step is a whole number in floats only where it is one exactly:
 * the nearest other quotient is 1 / step away.
 */
export function roundIfSure(
  value: number,
  error: number,
  step: number,
  direction: RoundingDirection,
): number {
  if (step === 0) return value;
  const quotient = direction === "up" ? value / step : value / step + 0.5;
  if (error === 0 && Number.isInteger(quotient) && Number.isInteger(value) && Number.isInteger(step)) {
    return cleanMultiple(quotient, step);
  }
  const doubt = error / step + Number.EPSILON * (Math.abs(quotient) + 1);
  if (!(Math.abs(quotient - Math.round(quotient)) > doubt)) return NaN;
  return cleanMultiple(direction === "up" ? Math.ceil(quotient) : Math.floor(quotient), step);
}

/** A decimal rounded to a multiple of `step`; the step is taken as its shortest decimal. */
export function roundExactly(value: Decimal, step: number, direction: RoundingDirection): number {
  if (step === 0) return value.toNumber();
  const quotient = value.div(step);
  const count = direction === "up" ? quotient.ceil() : quotient.plus(0.5).floor();
  return count.times(step).toNumber();
}

/**
 * A length that is computed by geometry, rounded to a multiple of `step`. Such a length is no decimal,
 * and a bar is not longer by a billionth of a millimetre: within `LENGTH_NOISE` of a multiple it is that multiple.
 */
export function roundMeasured(value: number, step: number, direction: RoundingDirection): number {
  const sure = roundIfSure(value, LENGTH_NOISE, step, direction);
  if (!Number.isNaN(sure)) return sure;
  const quotient = value / step;
  return cleanMultiple(
    direction === "up" ? Math.round(quotient) : Math.floor(quotient + 0.5 + LENGTH_NOISE),
    step,
  );
}

/** mm */
const LENGTH_NOISE = 1e-7;

/** Whole steps are exact in floats; others are multiplied in decimals. */
function cleanMultiple(count: number, step: number): number {
  return Number.isInteger(step) ? count * step : new Decimal(count).times(step).toNumber();
}
