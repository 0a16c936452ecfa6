import type { Machine } from "../bending/machine";

/** The former that one turn asks for. mm. */
export interface WantedFormer {
  readonly diameter: number;
  /** by which another may differ, where it follows from a dimension with a tolerance; else 0 */
  readonly slack: number;
  /** only the standard's least is wanted, so that a larger one does as well */
  readonly isLeast: boolean;
  /** no former may be smaller, unless a smaller one is named */
  readonly least: number;
}

/** mm within which a former of the rack is the one that is named */
const SAME = 0.5;

/**
 * The formers that a bender takes for the turns of a bar, mm: the one that is named, or within a bend's own
 * tolerance; the next larger one where only the standard's least was wanted. A former that the rack has not
 * stays as it is named, and the search for an order refuses it.
 */
export function formersOn(machine: Machine | null, wanted: readonly WantedFormer[]): number[] {
  const rack = [...(machine?.formers ?? [])].sort((a, b) => a - b);
  return wanted.map(({ diameter, slack, isLeast, least }) => {
    const close = rack
      .filter((held) => Math.abs(held - diameter) <= Math.max(SAME, slack) && held >= least - SAME)
      .sort((a, b) => Math.abs(a - diameter) - Math.abs(b - diameter));
    const larger = isLeast ? rack.find((held) => held > diameter) : undefined;
    return close[0] ?? larger ?? diameter;
  });
}
