import type { BarFacts } from "../bar/bar-facts";
import { barLength } from "../bar/bar-length";
import { isRefusal } from "../units/refusal";
import { farthestApart } from "./bar-envelope";

/** mm of room that a bar takes on a lorry: its cut length where it is straight or its shape is not held, else from end to end as it is bent; null where neither is known. */
export function reachOf(facts: BarFacts): number | null {
  const bent = facts.isStraight || facts.shape === null ? null : farthestApart(facts.shape);
  const cut = barLength(facts, "to cut");
  const length = isRefusal(cut) ? null : cut.length;
  return bent === null ? length : Math.min(bent, length ?? Infinity);
}
