import type { BarFacts } from "./bar-facts";

/** A bar whose length and legs do not follow what the sheet makes of them, and the one leg that would. */
export interface OffLeg {
  /**
   * blank: the leg is lacking; fits: another figure of it would make the length; longer: than the whole bar; sum: all
   * legs together make another length; shape: the legs are those of another shape; moved: it stands in the place of another
   */
  readonly kind: "blank" | "fits" | "longer" | "sum" | "shape" | "moved";
  /** place of the leg: A is 0 */
  readonly leg: number;
  /** mm that the leg would have; of a leg that is too long what it has, of a sum what it makes */
  readonly to: number;
  /** the shape that has such legs */
  readonly shape?: string;
  /** the place in which all others of the shape have a leg that stands in another one */
  readonly instead?: number;
  readonly kept: number;
  readonly tested: number;
}

/** A bar with its legs by place, and the shape that it is named by. */
export interface Legged {
  readonly place: number;
  readonly facts: BarFacts;
  readonly name: string;
  readonly legs: readonly (number | null)[];
  readonly length: number;
  readonly diameter: number;
  /** mm that a length may be off */
  readonly allowed: number;
}
