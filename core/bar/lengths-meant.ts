import { BEYOND_ANY_BAR } from "../schedule/cells/beyond-any-bar.data";
import type { BarFacts } from "./bar-facts";
import { LONGEST_ROLLED } from "./identities.data";
import { isFromCoil } from "./is-from-coil";

/** a point misplaced by one figure or two, and another unit */
const SLIPS = [10, 100, 1000] as const;
/** mm: what is cut shorter is no bar of a schedule */
const SHORTEST = 300;

const NONE: readonly number[] = [];

/** mm: what may be meant by the length of several bars that no bar is rolled in, the longest first; else none. */
export function lengthsMeant(facts: BarFacts): readonly number[] {
  const { length } = facts.row;
  // one "bar" so long is a run of bars, given by its metres
  if (length === null || length <= BEYOND_ANY_BAR.value || (facts.count ?? 1) <= 1) return NONE;
  if (isFromCoil(facts)) return NONE;
  return SLIPS.map((factor) => length / factor).filter(
    (meant) => meant >= SHORTEST && meant <= LONGEST_ROLLED.value,
  );
}
