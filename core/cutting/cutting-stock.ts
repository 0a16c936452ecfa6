import type { CuttingQuestion } from "./cutting-question";

/** A stock length as the solver sees it: whole ticks, kerf already folded in. */
export interface SolverStock {
  readonly index: number;
  readonly capacity: number;
  /** ticks bought with one bar; a remnant costs a grain, so that it is not wasted either */
  readonly cost: number;
  readonly limit: number;
}

/** Equal pieces and stocks gathered, all lengths whole numbers, longest first. */
export interface SolverProblem {
  readonly lengths: readonly number[];
  readonly demand: readonly number[];
  readonly stock: readonly SolverStock[];
}

/** One bar's cuts by item, on one stock. */
export interface SolverPattern {
  readonly stock: number;
  readonly counts: readonly number[];
}

export interface SolverUse {
  readonly pattern: SolverPattern;
  readonly times: number;
}

/** 1e-5 mm: 1/32 inch and a tenth of a millimetre are both whole, and 10^4 km still is exact. */
export const TICKS_PER_MM = 100_000;

const REMNANT_COST = 1e-3;

/** A piece takes its length and one kerf; the last kerf of a bar may fall off its end. */
export function solverProblem(question: CuttingQuestion): SolverProblem {
  const ticks = (mm: number): number => Math.round(mm * TICKS_PER_MM);
  const kerf = ticks(question.kerf);
  const byLength = new Map<number, number>();
  for (const piece of question.pieces) {
    if (piece.count === 0) continue;
    const length = ticks(piece.length) + kerf;
    byLength.set(length, (byLength.get(length) ?? 0) + piece.count);
  }
  const items = [...byLength].sort((a, b) => b[0] - a[0]);
  const stock = question.stock
    .map((bar, index) => ({
      index,
      capacity: ticks(bar.length) - ticks(question.endCrop) + kerf,
      cost: ticks(bar.length) * (bar.remnant ? REMNANT_COST : 1),
      limit: bar.count ?? Number.POSITIVE_INFINITY,
    }))
    .filter((bar) => bar.limit > 0 && bar.capacity > 0);
  return { lengths: items.map(([length]) => length), demand: items.map(([, count]) => count), stock };
}
