import type { SolverProblem, SolverUse } from "./cutting-stock";
import { EvenShares } from "./even-shares";
import { fullBarsInStages } from "./full-bars-in-stages";
import { fullPatterns, type ShortPattern } from "./full-patterns";
import type { Work } from "./work";

/** Share of the work after which the search is given up. */
const SHARE = { nothingOver: 0.7, littleOver: 0.15 };
const MOST_PATTERNS = 16_000;
/** pieces in a bar beyond which full bars are so many that the relaxation finds a plan of them sooner */
const MOST_PIECES = 4.5;

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
  if (slack === 0 && pieces <= bars * MOST_PIECES) {
    work.upTo(SHARE.nothingOver);
    const found = fullBarsInStages(problem, bars, random, work);
    return found?.map((pattern) => useOf(problem, pattern)) ?? null;
  }
  work.upTo(SHARE.littleOver);
  const list = fullPatterns(problem, capacity - slack, MOST_PATTERNS, work);
  if (!list.isWhole) return null;
  const found = new EvenShares(list.patterns, problem, slack, work).search(random);
  return found?.map((at) => useOf(problem, list.patterns[at]!)) ?? null;
}

function useOf({ lengths, stock }: SolverProblem, { items, counts }: ShortPattern): SolverUse {
  const inFull = new Array<number>(lengths.length).fill(0);
  items.forEach((item, k) => {
    inFull[item] = counts[k]!;
  });
  return { pattern: { stock: stock[0]!.index, counts: inFull }, times: 1 };
}
