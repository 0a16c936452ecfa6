import type { Cited } from "../standards/citation";
import type { Standard, Use } from "../standards/port";
import { isRefusal } from "../units/refusal";

/** Answers kept by what is asked, innermost by diameter. */
type Answers = Map<string | null, Map<string | null, Map<Use, Map<number, Cited<number> | null>>>>;

const MOST_REMEMBERED = 1000;
const remembered = new WeakMap<Standard, Answers>();

/**
 * Least former, mm, of a bar of `diameter` mm; null where the standard holds none for it. `grade` is a name
 * of the standard's own. Each question is asked once.
 */
export function leastFormerOf(
  standard: Standard,
  diameter: number,
  use: Use,
  coating: string | null,
  grade: string | null,
): Cited<number> | null {
  let answers = remembered.get(standard);
  if (answers === undefined) {
    answers = new Map();
    remembered.set(standard, answers);
  }
  const byDiameter = inner(inner(inner(answers, coating), grade), use);
  let answer = byDiameter.get(diameter);
  if (answer === undefined) {
    if (byDiameter.size >= MOST_REMEMBERED) byDiameter.clear();
    answer = ask(standard, diameter, use, coating, grade);
    byDiameter.set(diameter, answer);
  }
  return answer;
}

function ask(
  standard: Standard,
  diameter: number,
  use: Use,
  coating: string | null,
  grade: string | null,
): Cited<number> | null {
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
