import type { Machine } from "../bending/machine";
import type { PlanarPath } from "../shapes/path";
import type { WantedFormer } from "./bar-to-bend";

/** The former that a rack has for one turn, mm. */
export interface FormerHeld {
  readonly diameter: number;
  /** `larger`: the next larger one; `none`: the rack has none, and the diameter is what was wanted */
  readonly as: "wanted" | "larger" | "none";
}

/** mm within which a former of the rack is the one that is named */
const SAME_FORMER = 0.5;

/**
 * The formers that a bender takes for the turns of a bar: the one that is named, or within a bend's own
 * tolerance; the next larger one where only the standard's least was wanted. A rack that is not written
 * down, and no bender at all, take what is wanted.
 */
export function formersOn(machine: Machine | null, wanted: readonly WantedFormer[]): FormerHeld[] {
  const held = machine?.formers ?? null;
  if (held === null) return wanted.map(({ diameter }) => ({ diameter, as: "wanted" }));
  const rack = [...held].sort((a, b) => a - b);
  return wanted.map(({ diameter, slack, isLeast, least }): FormerHeld => {
    const [close] = rack
      .filter((one) => Math.abs(one - diameter) <= Math.max(SAME_FORMER, slack))
      .filter((one) => one >= least - SAME_FORMER)
      .sort((a, b) => Math.abs(a - diameter) - Math.abs(b - diameter));
    if (close !== undefined) return { diameter: close, as: "wanted" };
    const larger = isLeast ? rack.find((one) => one > diameter) : undefined;
    return larger === undefined ? { diameter, as: "none" } : { diameter: larger, as: "larger" };
  });
}

/** Every turn about its own former, mm. */
export function pathAbout(path: PlanarPath, formers: readonly number[]): PlanarPath {
  const turns = path.turns.map((turn, index) => ({ ...turn, radius: (formers[index] as number) / 2 }));
  return { ...path, turns };
}
