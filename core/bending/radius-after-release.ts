import type { PlanarPath } from "../shapes/path";
import { type BarOnFormer, curvatureKept, elasticCoreShare } from "./elastic-core";

export interface ReleasedRadius {
  /** mm inside, after release */
  readonly inside: number;
  /** mm by which the centre line's radius grows */
  readonly growth: number;
  /** mm by which the two legs at a right angle come out longer together; negative is shorter */
  readonly legsAtRightAngle: number;
  /** mm by which a 180 hook comes out wider */
  readonly hookWidth: number;
}

/**
 * The radius after release and what it does to dimensions. The developed length does not change: use the
 * nominal radius for lengths, and this one only for the question whether it fits (derived, lower bound).
 *
 * @example
 * radiusAfterRelease({ diameter: 32, former: 224, yield: 500 }).growth; // 4.5
 */
export function radiusAfterRelease(bar: BarOnFormer): ReleasedRadius {
  const loaded = (bar.former + bar.diameter) / 2;
  const released = loaded / curvatureKept(elasticCoreShare(bar));
  const growth = released - loaded;
  return {
    inside: released - bar.diameter / 2,
    growth,
    legsAtRightAngle: -(2 * Math.tan(Math.PI / 4) - Math.PI / 2) * growth,
    hookWidth: 2 * growth,
  };
}

export type RadiusConcern =
  | "five or more bends of 25 mm or thicker add up"
  | "a hook's width grows"
  | "high-strength bar opens further";

/** Where the growth of the radius is worth looking at; elsewhere it stays within any cutting tolerance. */
export function radiusConcerns(path: PlanarPath, bar: BarOnFormer): readonly RadiusConcern[] {
  const concerns: RadiusConcern[] = [];
  if (path.turns.length >= MANY_BENDS && bar.diameter >= THICK) {
    concerns.push("five or more bends of 25 mm or thicker add up");
  }
  if (path.turns.some((turn) => Math.abs(turn.angle) === 180)) concerns.push("a hook's width grows");
  if (bar.yield >= HIGH_STRENGTH) concerns.push("high-strength bar opens further");
  return concerns;
}

const MANY_BENDS = 5;
const THICK = 25;
const HIGH_STRENGTH = 600;
