import type { Point } from "./point";
import { segmentDistance } from "./segment-distance";

/** A segment with a rounded thickness: every point within `radius` of it. A disc has equal ends. */
export interface Capsule {
  readonly from: Point;
  readonly to: Point;
  readonly radius: number;
}

/** Clear distance between two capsules; negative where they run into each other. */
export function capsuleGap(a: Capsule, b: Capsule): number {
  return segmentDistance(a.from, a.to, b.from, b.to) - a.radius - b.radius;
}
