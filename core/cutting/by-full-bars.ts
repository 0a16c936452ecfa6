import type { SolverProblem, SolverUse } from "./cutting-stock";
import { ExactCover } from "./exact-cover";
import { fullPatterns, type ShortPattern } from "./full-patterns";
import type { Work } from "./work";

/**
 * A plan with so many bars of one length, each of which leaves no more over than all together may: where
 * that is little or nothing, few patterns do, and they are searched without a relaxation. Null where none
 * was found or the patterns are too many.
 */
export function byFullBars(
  problem: SolverProblem,
  bars: number,
  random: () => number,
  work: Work,
): readonly SolverUse[] | null {
  const { capacity } = problem.stock[0]!;
  const total = problem.lengths.reduce((sum, length, item) => sum + length * problem.demand[item]!, 0);
  const slack = bars * capacity - total;
  const patterns = fullPatterns(problem, capacity - slack, work);
  if (patterns === null) return null;
  const found = new ExactCover(patterns, problem, slack, work).search(random);
  return found === null ? null : found.map((at) => useOf(problem, patterns[at]!));
}

function useOf({ lengths, stock }: SolverProblem, { items, counts }: ShortPattern): SolverUse {
  const inFull = new Array<number>(lengths.length).fill(0);
  items.forEach((item, k) => {
    inFull[item] = counts[k]!;
  });
  return { pattern: { stock: stock[0]!.index, counts: inFull }, times: 1 };
}
