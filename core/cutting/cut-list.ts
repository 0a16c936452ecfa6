import type { CuttingPlan } from "./cutting-plan";

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
): CutListRow[] {
  const waiting = new Map<number, { mark: string; count: number }[]>();
  for (const { mark, length, count } of pieces) {
    const queue = waiting.get(lengthKey(length)) ?? [];
    queue.push({ mark, count });
    waiting.set(lengthKey(length), queue);
  }
  return plan.patterns.map((pattern) => ({
    stock: pattern.stock,
    fromRemnant: pattern.remnant,
    bars: pattern.times,
    stops: pattern.cuts.map(({ length, count }) => ({
      length,
      perBar: count,
      marks: deal(waiting.get(lengthKey(length)) ?? [], count * pattern.times),
    })),
    offcut: pattern.offcut,
    destination: pattern.offcut <= 0 ? "none" : pattern.offcut >= leastRemnant ? "rack" : "scrap",
  }));
}

/** Lengths equal to a thousandth of a millimetre are one length. */
const lengthKey = (length: number): number => Math.round(length * THOUSANDTHS);

const THOUSANDTHS = 1000;

function deal(queue: { mark: string; count: number }[], count: number): { mark: string; count: number }[] {
  const dealt: { mark: string; count: number }[] = [];
  for (let left = count; left > 0 && queue.length > 0; ) {
    const first = queue[0]!;
    const taken = Math.min(left, first.count);
    dealt.push({ mark: first.mark, count: taken });
    left -= taken;
    first.count -= taken;
    if (first.count === 0) queue.shift();
  }
  return dealt;
}
