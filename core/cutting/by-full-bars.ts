import type { SolverProblem, SolverUse } from "./cutting-stock";
import { EvenShares } from "./even-shares";
import { fullPatterns, type ShortPattern } from "./full-patterns";
import type { Work } from "./work";

/** patterns listed, and the share of the work after which more are listed or the search is given up */
const STAGES = [
  { most: 16_000, share: 0.15 },
  { most: 80_000, share: 0.7 },
];

/**
 * A plan with so many bars of one length, each of which leaves no more over than all together may: where
 * that is little or nothing, few patterns do, and they are searched without a relaxation. Null where none
 * was found, or many patterns would do: the relaxation does better then.
 */
export function byFullBars(
  problem: SolverProblem,
  bars: number,
  random: () => number,
  work: Work,
): readonly SolverUse[] | null {
  const { lengths, demand, stock } = problem;
  const { capacity } = stock[0]!;
  const total = lengths.reduce((sum, length, item) => sum + length * demand[item]!, 0);
  const pieces = demand.reduce((sum, count) => sum + count, 0);
  const slack = bars * capacity - total;
  for (const { most, share } of slack === 0 ? STAGES : STAGES.slice(0, 1)) {
    work.upTo(share);
    const list = fullPatterns(problem, capacity - slack, most, work);
    if (!list.isWhole && (slack > 0 || list.pieces * bars <= pieces)) continue;
    const found = new EvenShares(list.patterns, problem, slack, work).search(random);
    if (found !== null) return found.map((at) => useOf(problem, list.patterns[at]!));
  }
  return null;
}

function useOf({ lengths, stock }: SolverProblem, { items, counts }: ShortPattern): SolverUse {
  const inFull = new Array<number>(lengths.length).fill(0);
  items.forEach((item, k) => {
    inFull[item] = counts[k]!;
  });
  return { pattern: { stock: stock[0]!.index, counts: inFull }, times: 1 };
}
