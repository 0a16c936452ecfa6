import type { SiteDeductions } from "../standards/port";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { developedLength } from "./developed-length";
import type { ResolvedShape } from "./resolve-shape";

const angleNotHeld = defineRefusal(
  "site-angle-not-held",
  "not-held",
  "bend {bend} turns {angle} degrees, and {standard} holds deductions for {held} only: use a standard that goes by geometry",
);

/**
 * The sum of the legs as given, less a deduction for each bend, more the allowance of each end hook;
 * mm, unrounded. A practice, not geometry. Refuses an angle that the practice has no deduction for.
 */
export function siteCutLength(shape: ResolvedShape, site: SiteDeductions): number | Refusal {
  const { path, diameter, standard } = shape;
  if (path === null || path.kind !== "planar") {
    const developed = developedLength(shape);
    return isRefusal(developed) ? developed : developed.length;
  }
  const { bends, hook } = site;
  let length = 0;
  for (const leg of path.legs) {
    length += leg.hook === undefined ? leg.length : Math.max(hook.perDiameter * diameter, hook.least);
  }
  for (const [at, turn] of path.turns.entries()) {
    const angle = Math.abs(turn.angle);
    // a half-circle hook is all in its allowance
    if (angle === 180 && (path.legs[at]?.hook ?? path.legs[at + 1]?.hook) !== undefined) continue;
    const bend = bends.find((row) => row.angle === angle);
    if (bend === undefined) {
      const held = bends.map((row) => row.angle).join(", ");
      return angleNotHeld({ bend: at + 1, angle, standard: standard.id, held });
    }
    length -= bend.perDiameter * diameter;
  }
  return length;
}
