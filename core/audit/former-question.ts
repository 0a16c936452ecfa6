import type { Cited } from "../standards/citation";
import type { Standard, Use } from "../standards/port";
import { isRefusal } from "../units/refusal";

export interface BarOfFormer {
  /** mm */
  readonly diameter: number;
  readonly use: Use;
  readonly coating: string | null;
  /** a name of the standard's own; null where none is said or known */
  readonly grade: string | null;
}

/** Answers kept by what is asked, innermost by diameter. */
type Answers = Map<string | null, Map<string | null, Map<Use, Map<number, Cited<number> | null>>>>;

const MOST_REMEMBERED = 1000;
const remembered = new WeakMap<Standard, Answers>();

/** Least former, mm; null where the standard holds none for such a bar. Each question is asked once. */
export function leastFormerOf(standard: Standard, bar: BarOfFormer): Cited<number> | null {
  let answers = remembered.get(standard);
  if (answers === undefined || answers.size >= MOST_REMEMBERED) {
    answers = new Map();
    remembered.set(standard, answers);
  }
  const byUse = inner(inner(answers, bar.coating), bar.grade);
  const byDiameter = inner(byUse, bar.use);
  let answer = byDiameter.get(bar.diameter);
  if (answer === undefined) {
    if (byDiameter.size >= MOST_REMEMBERED) byDiameter.clear();
    answer = ask(standard, bar);
    byDiameter.set(bar.diameter, answer);
  }
  return answer;
}

function ask(standard: Standard, { diameter, use, coating, grade }: BarOfFormer): Cited<number> | null {
  const answer = standard.former({
    diameter,
    use,
    ...(coating === null ? {} : { coating }),
    ...(grade === null ? {} : { grade }),
  });
  return isRefusal(answer) ? null : answer;
}

function inner<Key, InnerKey, Value>(outer: Map<Key, Map<InnerKey, Value>>, key: Key): Map<InnerKey, Value> {
  let map = outer.get(key);
  if (map === undefined) {
    if (outer.size >= MOST_REMEMBERED) outer.clear();
    map = new Map();
    outer.set(key, map);
  }
  return map;
}
