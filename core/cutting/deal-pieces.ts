import type { CuttingPlan } from "./cutting-plan";

/** Pieces of one row that are cut at one stop of a pattern. */
export interface DealtPieces<T> {
  readonly piece: T;
  readonly count: number;
}

/**
 * The pieces of a plan dealt to the rows that ask for them, in their order: by pattern, then by stop. Bars
 * of a pattern are cut one after the other, so that the first pieces come of the first bars. Lengths mm.
 */
export function dealPieces<T extends { readonly length: number; readonly count: number }>(
  plan: CuttingPlan,
  pieces: readonly T[],
): DealtPieces<T>[][][] {
  const waiting = new Map<number, { piece: T; count: number }[]>();
  for (const piece of pieces) {
    const queue = waiting.get(lengthKey(piece.length)) ?? [];
    queue.push({ piece, count: piece.count });
    waiting.set(lengthKey(piece.length), queue);
  }
  return plan.patterns.map(({ cuts, times }) =>
    cuts.map(({ length, count }) => deal(waiting.get(lengthKey(length)) ?? [], count * times)),
  );
}

/** Lengths equal to a thousandth of a millimetre are one length. */
const lengthKey = (length: number): number => Math.round(length * THOUSANDTHS);

const THOUSANDTHS = 1000;

function deal<T>(queue: { piece: T; count: number }[], count: number): DealtPieces<T>[] {
  const dealt: DealtPieces<T>[] = [];
  for (let left = count; left > 0 && queue.length > 0; ) {
    const first = queue[0]!;
    const taken = Math.min(left, first.count);
    dealt.push({ piece: first.piece, count: taken });
    left -= taken;
    first.count -= taken;
    if (first.count === 0) queue.shift();
  }
  return dealt;
}
