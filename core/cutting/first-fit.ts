import type { SolverPattern, SolverProblem, SolverStock, SolverUse } from "./cutting-stock";

/**
 * The plain rule: the longest piece first into the first bar that has room. Bar by bar this is the
 * same as taking, longest first, whatever still fits; equal bars are made in one go. With several
 * stock lengths the longest at hand is opened and then changed for the shortest that holds the same.
 * Gives null where the stock runs out.
 */
export function firstFit(problem: SolverProblem): SolverUse[] | null {
  const left = problem.demand.slice();
  const limits = new Map(problem.stock.map((bar) => [bar.index, bar.limit]));
  const byLength = problem.stock.slice().sort((a, b) => b.capacity - a.capacity);
  const uses: SolverUse[] = [];
  while (left.some((count) => count > 0)) {
    const bar = byLength.find((candidate) => limits.get(candidate.index)! > 0);
    if (bar === undefined) return null;
    const counts = greedyCounts(problem.lengths, left, bar.capacity);
    const used = counts.reduce((sum, count, item) => sum + count * problem.lengths[item]!, 0);
    if (used === 0) return null;
    const holder = cheapestHolder(byLength, limits, used) ?? bar;
    let times = limits.get(holder.index)!;
    counts.forEach((count, item) => {
      if (count > 0) times = Math.min(times, Math.floor(left[item]! / count));
    });
    counts.forEach((count, item) => {
      left[item] = left[item]! - count * times;
    });
    limits.set(holder.index, limits.get(holder.index)! - times);
    const pattern: SolverPattern = { stock: holder.index, counts };
    uses.push({ pattern, times });
  }
  return uses;
}

function greedyCounts(lengths: readonly number[], left: readonly number[], capacity: number): number[] {
  let room = capacity;
  return lengths.map((length, item) => {
    const count = Math.min(left[item]!, Math.floor(room / length));
    room -= count * length;
    return count;
  });
}

/** The cheapest bar still at hand that holds this much. */
export function cheapestHolder(
  stock: readonly SolverStock[],
  limits: ReadonlyMap<number, number>,
  used: number,
): SolverStock | null {
  let best: SolverStock | null = null;
  for (const bar of stock) {
    if (bar.capacity < used || limits.get(bar.index)! <= 0) continue;
    if (best === null || bar.cost < best.cost) best = bar;
  }
  return best;
}
