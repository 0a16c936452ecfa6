import { TRIPLE } from "./evidence.data";
import { logOdds } from "./log-odds";
import type { ValueColumn } from "./value-column";

/** Three columns of which one is the product of the others: members, bars of one, total. */
export interface Triple {
  readonly total: ValueColumn;
  readonly factors: readonly [ValueColumn, ValueColumn];
  readonly kept: number;
  readonly broken: number;
  /** rows of one member or one bar, which prove little */
  readonly trivial: number;
  readonly worth: number;
  readonly brokenRows: readonly number[];
}

/** All triples of count columns that most rows keep, the surest first. */
export function countTriples(counts: readonly ValueColumn[], rows: readonly number[]): Triple[] {
  const found: Triple[] = [];
  for (const total of counts) {
    for (let first = 0; first < counts.length; first += 1) {
      for (let second = first + 1; second < counts.length; second += 1) {
        const [one, other] = [counts[first] as ValueColumn, counts[second] as ValueColumn];
        if (one === total || other === total) continue;
        const triple = tested(total, one, other, rows);
        if (triple !== null) found.push(triple);
      }
    }
  }
  return found.sort((one, other) => other.worth - one.worth);
}

function tested(
  total: ValueColumn,
  one: ValueColumn,
  other: ValueColumn,
  rows: readonly number[],
): Triple | null {
  const { chance, least, timesBroken, trivial: worthTrivial, exact } = TRIPLE.value;
  let kept = 0;
  let trivial = 0;
  const brokenRows: number[] = [];
  for (const row of rows) {
    const [a, b, sum] = [one.values[row] as number, other.values[row] as number, total.values[row] as number];
    if (!(a * b > 0) || !(sum > 0)) continue;
    if (Math.abs(a * b - sum) >= exact) brokenRows.push(row);
    else if (a === 1 || b === 1) trivial += 1;
    else kept += 1;
  }
  const broken = brokenRows.length;
  if (kept < least || kept + trivial <= timesBroken * broken) return null;
  const worth = logOdds(kept, broken, chance) + worthTrivial * trivial;
  return { total, factors: [one, other], kept, broken, trivial, worth, brokenRows };
}
