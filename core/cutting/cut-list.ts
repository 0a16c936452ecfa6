import type { CuttingPlan } from "./cutting-plan";
import { dealPieces } from "./deal-pieces";
import type { HeatBars } from "./heats";

/** Pieces of one bar mark. */
export interface MarkedPiece {
  readonly mark: string;
  /** mm, cut length */
  readonly length: number;
  readonly count: number;
}

/** One setting of the stop, and the marks that its pieces serve. */
export interface StopSetting {
  /** mm from blade to stop */
  readonly length: number;
  /** pieces from each bar */
  readonly perBar: number;
  readonly marks: readonly { readonly mark: string; readonly count: number }[];
}

export interface CutListRow {
  /** mm, stock length */
  readonly stock: number;
  readonly fromRemnant: boolean;
  /** bars cut alike */
  readonly bars: number;
  /** heats of these bars, in the order in which they are cut; empty where no stock of the size says one */
  readonly heats: readonly HeatBars[];
  /** longest first */
  readonly stops: readonly StopSetting[];
  /** mm left of each bar */
  readonly offcut: number;
  /** back to the rack where it is long enough to be used again */
  readonly destination: "rack" | "scrap" | "none";
}

/**
 * The plan as the person at the shear reads it: bar by bar the stops in order, the marks each piece
 * goes to, and where the rest goes. Pieces of one length are dealt to their marks in schedule order.
 * Lengths in mm; `leastRemnant` is the shortest rest worth keeping.
 */
export function cutList(
  plan: CuttingPlan,
  pieces: readonly MarkedPiece[],
  leastRemnant: number,
  drawn: readonly (readonly HeatBars[])[] = [],
): CutListRow[] {
  const dealt = dealPieces(plan, pieces);
  return plan.patterns.map((pattern, at) => ({
    stock: pattern.stock,
    fromRemnant: pattern.remnant,
    bars: pattern.times,
    heats: drawn[at] ?? [],
    stops: pattern.cuts.map(({ length, count }, stop) => ({
      length,
      perBar: count,
      marks: dealt[at]![stop]!.map(({ piece, count }) => ({ mark: piece.mark, count })),
    })),
    offcut: pattern.offcut,
    destination: pattern.offcut <= 0 ? "none" : pattern.offcut >= leastRemnant ? "rack" : "scrap",
  }));
}
