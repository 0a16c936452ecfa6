import type { Machine, RatedBars } from "../bending/machine";
import type { Cell } from "../schedule/sheet";

/** A shear or saw, with what its plate lets it cut at once. */
export interface Cutter {
  readonly name: string;
  readonly rated: readonly RatedBars[];
  /** mm lost in a cut; 0 for a shear, null where it is not written down */
  readonly kerf: number | null;
  /** mm taken off each bar's end; null where it is not written down */
  readonly endCrop: number | null;
}

/** A stock length that the yard buys or holds. */
export interface ShopStock {
  /** as typed; null serves every size */
  readonly size: string | null;
  /** mm */
  readonly length: number;
  /** null is as many as needed */
  readonly count: number | null;
  readonly remnant: boolean;
  /** number of the mill's certificate; null where it is not written down */
  readonly heat: string | null;
  /** row within the sheet's used range, from 0 */
  readonly row: number;
}

/** Handling and site figures of the yard; null is not written down. */
export interface ShopLimits {
  /** kg */
  readonly hoist: number | null;
  /** kg */
  readonly handLift: number | null;
  /** mm */
  readonly transportWidth: number | null;
  /** kg that a lorry may carry */
  readonly lorryLoad: number | null;
  /** mm, the longest bar that it takes */
  readonly lorryLength: number | null;
  /** mm, shortest rest that goes back to the rack */
  readonly leastRemnant: number | null;
  /** degrees Celsius in the shop now */
  readonly temperature: number | null;
}

/** The day of a pour, as "2030-05-31". */
export interface PourDay {
  readonly pour: string;
  readonly day: string;
}

/** A cell of the Shop sheet that could not be read; rows and columns within the used range, from 0. */
export interface ShopProblem {
  readonly row: number;
  readonly column: number;
  readonly typed: string;
  readonly wanted: string;
  /** it can be read, but nothing goes by it, and `wanted` says why */
  readonly isUnused?: true;
}

/** A table of the Shop sheet taken whole; `top` and `left` within the used range, from 0. */
export interface ShopTable {
  readonly block: readonly (readonly Cell[])[];
  readonly top: number;
  readonly left: number;
}

/** What one yard owns and knows, as its `Shop` sheet says. A blank is not known, never a pass. */
export interface Shop {
  readonly benders: readonly Machine[];
  readonly cutters: readonly Cutter[];
  readonly stock: readonly ShopStock[];
  readonly limits: ShopLimits;
  readonly pours: readonly PourDay[];
  /** the table of rates with its header row; null where the sheet has none */
  readonly rates: ShopTable | null;
  /** the trial log with its header row; null where the sheet has none */
  readonly trials: ShopTable | null;
  readonly problems: readonly ShopProblem[];
}

/** The worksheet's name. */
export const SHOP_SHEET = "Shop";
