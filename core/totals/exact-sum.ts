import { Decimal } from "decimal.js";

const PARTS = 1_000_000;
const MOST_PARTS = Number.MAX_SAFE_INTEGER / 4;

/**
 * A running sum of decimals as they are printed: 0.1 + 0.2 is 0.3, in any order. Values with at most
 * six decimals are added as whole millionths; a finer or huge one goes through decimal.js.
 */
export class ExactSum {
  private parts = 0;
  private rest: Decimal | null = null;

  add(value: number): void {
    const whole = Math.round(value * PARTS);
    const isWhole = whole / PARTS === value && Math.abs(this.parts + whole) < MOST_PARTS;
    if (isWhole) this.parts += whole;
    else this.rest = new Decimal(value).plus(this.rest ?? 0);
  }

  get value(): number {
    return this.rest === null
      ? this.parts / PARTS
      : this.rest.plus(new Decimal(this.parts).div(PARTS)).toNumber();
  }

  /** The sum divided without an error of its own, as for kilograms to tonnes. */
  over(divisor: number): number {
    const sum = new Decimal(this.parts).div(PARTS).plus(this.rest ?? 0);
    return sum.div(divisor).toNumber();
  }
}
