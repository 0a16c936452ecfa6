import type { BarRow } from "../bar-row";
import type { TableLayout } from "../columns/decide-columns";

const MM_PER_METRE = 1000;
/** as sums are rounded: half of the last digit that a list writes of its masses, or so much of the sum */
const WITHIN = 0.05;
const SHARE = 0.0005;

/**
 * True where the number under a column of masses or total lengths is what the bars above add up to: all of them, or those
 * since the sum before.
 */
export function isSumAbove(
  bars: readonly BarRow[],
  { table, lengths, massFactor }: TableLayout,
  since: number,
  column: number,
  value: number,
): boolean {
  const isMass = table.columns.get("mass")?.column === column;
  if (!isMass && table.columns.get("totalLength")?.column !== column) return false;
  const factor = isMass ? massFactor : (lengths.get("totalLength")?.factor ?? MM_PER_METRE);
  const typed = value * factor;
  const isNear = (sum: number): boolean =>
    Math.abs(sum - typed) <= Math.max(WITHIN * factor, SHARE * Math.abs(sum));
  let [sum, summed] = [0, 0];
  for (let at = bars.length - 1; at >= 0; at -= 1) {
    const bar = bars[at] as BarRow;
    if (bar.row < since && summed > 1 && isNear(sum)) return true;
    const amount = isMass ? bar.mass : bar.totalLength;
    if (amount === null || amount === undefined) continue;
    sum += amount;
    summed += 1;
  }
  return summed > 1 && isNear(sum);
}
