import { splitSizeText } from "../../bars/split-size-text";
import type { Bar } from "../port";
import { SAME_DIAMETER } from "./remembered.data";
import type { StandardTables } from "./standard-tables";

/** The d, mm, that a standard's "3d" is three of: the diameter, or the number in the bar's name. */
export function multipleBase(
  diameter: number,
  { multiplesOfName }: StandardTables,
  bars: readonly Bar[],
): number {
  if (multiplesOfName !== true) return diameter;
  const bar = bars.find((one) => Math.abs(one.diameter - diameter) <= SAME_DIAMETER);
  return bar === undefined ? diameter : (splitSizeText(bar.size)?.number ?? diameter);
}
