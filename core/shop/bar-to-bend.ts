import type { PlanarPath } from "../shapes/path";
import type { LengthUnit } from "../units/length-unit";

/** The steel of a bar as trials and plates name it. */
export interface Steel {
  /** as typed in its own column */
  readonly grade: string | null;
  /** "H" of "H16" */
  readonly letter: string | null;
  /** MPa */
  readonly yield: number;
  /** false where no grade is said and the standard's usual one was taken */
  readonly isYieldSure: boolean;
}

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

/** A bent bar as a bender must take it. */
export interface BarToBend {
  readonly path: PlanarPath;
  /** mm */
  readonly diameter: number;
  /** one a turn */
  readonly formers: readonly WantedFormer[];
  readonly steel: Steel;
  /** mm, clear inside width of a closed link; null for any other bar */
  readonly linkInside: number | null;
  /** in which reasons are worded */
  readonly unit: LengthUnit;
}

/** Degrees to bend to, one a turn, and whether trials bear all of them. */
export interface BentTo {
  readonly angles: readonly number[];
  /** bends whose angle no trial bears */
  readonly guessed: number;
}
