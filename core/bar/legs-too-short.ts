import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { BarFacts } from "./bar-facts";

/** mm: a leg with no room for the right angles beside it. */
export interface LegTooShort {
  readonly leg: (typeof DIMENSION_LETTERS)[number];
  readonly length: number;
  readonly needed: number;
}

/** Most legs, and of each the diameters that bends may take of it, of a length that is the sum of its legs. */
const MOST_LEGS = 3;
const LESS_A_BEND = 6;
const CLOSE = 1;
const SAYS_U = /^\s*u\b/i;

/**
 * Legs that make the length in one go, of which the first, the last or, in a U, the middle one has no room for its
 * right angles about a former, mm.
 */
export function legsTooShort(facts: BarFacts, former: number): readonly LegTooShort[] {
  const { row, diameter } = facts;
  const { length } = row;
  const dims = row.dims.flatMap((leg, at) => (leg === null || leg === 0 ? [] : [{ leg, at }]));
  if (diameter === null || length === null || dims.length < 2 || dims.length > MOST_LEGS) return [];
  if (!Number.isFinite(former)) return [];
  const less = dims.reduce((sum, { leg }) => sum + leg, 0) - length;
  if (less < -CLOSE || less > LESS_A_BEND * diameter * (dims.length - 1)) return [];
  const bend = former / 2 + diameter;
  const isU = dims.length === MOST_LEGS && SAYS_U.test(String(facts.typed("shape") ?? ""));
  return dims.flatMap(({ leg, at }, place) => {
    const isEnd = place === 0 || place === dims.length - 1;
    const needed = isEnd ? bend : isU ? 2 * bend : 0;
    const letter = DIMENSION_LETTERS[at];
    return letter === undefined || leg >= needed - CLOSE ? [] : [{ leg: letter, length: leg, needed }];
  });
}
