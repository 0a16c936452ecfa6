import type { SiteDeductions } from "../standards/port";
import { defineRefusal, type Refusal } from "../units/refusal";
import type { PlanarPath } from "./path";

/** What a practice of deductions adds up, mm. */
export interface SiteCutLength {
  readonly length: number;
  /** legs as given and allowances of end hooks, in order */
  readonly added: readonly number[];
  /** one for each bend that costs something */
  readonly taken: readonly number[];
}

export interface SiteQuestion {
  readonly path: PlanarPath;
  /** mm */
  readonly diameter: number;
  /** id that a refusal names */
  readonly standard: string;
}

const angleNotHeld = defineRefusal(
  "site-angle-not-held",
  "not-held",
  "bend {bend} turns {angle} degrees, and {standard} holds deductions for {held} only: use a standard that goes by geometry",
);

/**
 * The sum of the legs as given, less a deduction for each bend, more the allowance of each end hook;
 * mm, unrounded. A practice, not geometry. Refuses an angle that the practice has no deduction for.
 */
export function siteCutLength(question: SiteQuestion, site: SiteDeductions): SiteCutLength | Refusal {
  const { path, diameter, standard } = question;
  const { bends, hooks, leastHook } = site;
  const added = path.legs.map(({ hook, length }) => {
    const row = hooks.find(({ turn }) => turn === hook?.turn);
    return row === undefined ? length : Math.max(row.perDiameter * diameter, leastHook);
  });
  const taken: number[] = [];
  for (const [at, turn] of path.turns.entries()) {
    const angle = Math.abs(turn.angle);
    // a half-circle hook is all in its allowance
    if (angle === 180 && (path.legs[at]?.hook ?? path.legs[at + 1]?.hook) !== undefined) continue;
    const bend = bends.find((row) => row.angle === angle);
    if (bend === undefined) {
      const held = bends.map((row) => row.angle).join(", ");
      return angleNotHeld({ bend: at + 1, angle, standard, held });
    }
    taken.push(bend.perDiameter * diameter);
  }
  return { length: total(added) - total(taken), added, taken };
}

function total(lengths: readonly number[]): number {
  return lengths.reduce((sum, length) => sum + length, 0);
}
