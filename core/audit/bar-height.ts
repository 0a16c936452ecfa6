import type { BarFacts } from "../bar/bar-facts";

const RIGHT_ANGLE = 90;
const HALF_TURN = 180;
const BENDS_OF_CHAIR = 4;

/**
 * mm, outside: how high a U-bar, a hooked bar or a chair stands whose legs lie along a slab or wall; null for
 * any other bar.
 */
export function heightInSlab(facts: BarFacts, isChair: boolean): number | null {
  const { planarPath, diameter, former } = facts;
  if (planarPath === null || diameter === null) return null;
  const { legs, turns } = planarPath;
  const [first, second] = turns;
  if (first === undefined) return null;
  if (turns.length === 1 && Math.abs(first.angle) === HALF_TURN) {
    const inside = first.radius === null ? former : 2 * first.radius;
    return inside === null ? null : inside + 2 * diameter;
  }
  const isU = turns.length === 2 && first.angle === second?.angle && Math.abs(first.angle) === RIGHT_ANGLE;
  const isHat = isChair && turns.length === BENDS_OF_CHAIR;
  return isU || isHat ? (legs[1]?.length ?? null) : null;
}
