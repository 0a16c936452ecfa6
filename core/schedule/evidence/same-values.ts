import { METRES, WEIGH } from "./evidence.data";
import type { ValueColumn } from "./value-column";

const UNITS = Object.values(METRES.value);
const RATIOS: readonly number[] = [
  ...new Set(UNITS.flatMap((one) => UNITS.map((other) => Math.log(one / other)))),
];

/**
 * True where two columns hold the same amounts: equal in most rows, or in one and the same ratio of two units.
 * Members of one throughout make each and total equal, straight bars make a leg and the length equal, and lengths
 * in m may stand beside the same in mm: such columns cannot contradict what words say of either.
 */
export function holdSame(one: ValueColumn, other: ValueColumn): boolean {
  const { same, sameRows, sameWithin } = WEIGH.value;
  const off: number[] = [];
  for (let row = 0; row < one.rowCount; row += 1) {
    const apart = (one.logs[row] as number) - (other.logs[row] as number);
    if (!Number.isNaN(apart)) off.push(apart);
  }
  if (off.length <= sameRows) return false;
  const rounding = Math.max(sameWithin, roundingOf(one), roundingOf(other));
  return RATIOS.some((ratio) => {
    let equal = 0;
    for (const apart of off) if (Math.abs(apart - ratio) <= (ratio === 0 ? sameWithin : rounding)) equal += 1;
    return equal >= same * off.length;
  });
}

/** Half of the last place as a share of the middle: 1.25 m beside 1253 mm are the same. */
function roundingOf({ half, middle }: ValueColumn): number {
  return Number.isNaN(middle) ? 0 : half / middle;
}
