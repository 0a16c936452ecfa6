import { WEIGH } from "./evidence.data";
import type { ValueColumn } from "./value-column";

/** Bars of one member: the total is a whole number of times as many, in nearly every row that can be tested. */
export function divides(each: ValueColumn, all: ValueColumn, rows: readonly number[]): boolean {
  let [whole, tested] = [0, 0];
  for (const row of rows) {
    const times = (all.values[row] as number) / (each.values[row] as number);
    if (!Number.isFinite(times)) continue;
    tested += 1;
    if (Number.isInteger(times) && times >= 1) whole += 1;
  }
  return tested > 0 && whole >= WEIGH.value.arithmeticKeeps * tested;
}
