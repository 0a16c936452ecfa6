import type { PlanarPath } from "./path";

/** What the legs of a bar are measured to. */
export type LegBasis = "outside" | "centre line" | "inside";

export const LEG_BASES: readonly LegBasis[] = ["outside", "centre line", "inside"];

/** How far inside the outer face the measured line lies, in bar diameters. */
const DEPTH: Readonly<Record<LegBasis, number>> = { outside: 0, "centre line": 0.5, inside: 1 };

/**
 * mm that the centre line of the same typed legs is longer where they are measured to another line than
 * the outside: at each end that a bend adjoins a leg's set-back shrinks by the depth of that line, times
 * tan(t/2) up to 90 degrees and once above. Legs of standard end hooks are not typed and do not count.
 *
 * @example
 * longerThanOutside(path, 16, "centre line"); // one bend of 90: 2 x 8 = 16 mm
 */
export function longerThanOutside(path: PlanarPath, diameter: number, basis: LegBasis): number {
  const depth = DEPTH[basis] * diameter;
  return path.turns.reduce((sum, turn, bend) => {
    const angle = Math.abs(turn.angle);
    const perLeg = angle <= 90 ? Math.tan((angle * Math.PI) / 360) : 1;
    const typedLegs = [path.legs[bend], path.legs[bend + 1]].filter((leg) => leg?.hook === undefined).length;
    return sum + typedLegs * depth * perLeg;
  }, 0);
}
