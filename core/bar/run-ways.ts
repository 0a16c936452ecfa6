import type { BarFacts } from "./bar-facts";
import { RUN_HABIT } from "./identities.data";

/** A row with a count, a run and a spacing. */
export interface TestedRun {
  readonly facts: BarFacts;
  readonly count: number;
  readonly run: number;
  readonly spacing: number;
  /** run over spacing; null where the unit of one is not written */
  readonly gaps: number | null;
  /** of a text that says "3 x 34" beside them: both numbers */
  readonly factors?: readonly number[];
}

type Rounding = (gaps: number) => number;

const { exact } = RUN_HABIT.value;
/** An office counts the gaps or the bars, and rounds either way: most rows of a list keep one way. */
export const WAYS: readonly Rounding[] = [
  (gaps) => Math.floor(gaps + exact) + 1,
  (gaps) => Math.ceil(gaps - exact) + 1,
  (gaps) => Math.round(gaps) + 1,
  (gaps) => Math.floor(gaps + exact),
  (gaps) => Math.ceil(gaps - exact),
  (gaps) => Math.round(gaps),
];

/** "13" for "31" */
export function isTurned(count: number, expected: number): boolean {
  return count >= LEAST_TURNED && String(count) === [...String(expected)].reverse().join("");
}

const LEAST_TURNED = 12;

/** Of several members or faces a count of all is so many times that of one. */
export function isCount({ facts, count, factors = [] }: TestedRun, expected: number): boolean {
  if (count === expected) return true;
  const [one = 0, other = 0] = factors;
  if (one * other === count && factors.includes(expected)) return true;
  const { leastOfSeveral, mostTimes } = RUN_HABIT.value;
  const times = count / expected;
  const isOfAll = facts.row.each === null || facts.row.total === count;
  if (times === 2 && expected >= leastOfSeveral) return true;
  return isOfAll && Number.isInteger(times) && expected >= leastOfSeveral && times <= mostTimes;
}
