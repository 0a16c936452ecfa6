import { fillBar } from "./fill-bar";
import { firstFit } from "./first-fit";
import type { Remaining } from "./remaining";
import type { Work } from "./work";

const NODES = 2_000;
const STEPS_PER_NODE = 20;

/** Finishes a plan with the longest piece first into the first bar that has room; false where stock runs out. */
export function completeByFirstFit(plan: Remaining): boolean {
  const stock = plan.problem.stock.map((bar) => ({ ...bar, limit: plan.limits.get(bar.index)! }));
  const uses = firstFit({ lengths: plan.problem.lengths, demand: plan.left, stock });
  if (uses === null) return false;
  for (const { pattern, times } of uses) plan.use(pattern, times);
  return plan.done;
}

/**
 * Finishes a plan bar by bar: the longest piece left is put in, and the rest of the bar is filled as
 * full as can be; of several stock lengths the one that wastes the smallest share. `weigh` shifts what
 * counts as full and `weighStock` which stock is liked, so that repeated tries differ.
 */
export function completeByFullestBar(
  plan: Remaining,
  weigh: (item: number) => number,
  weighStock: () => number,
  work: Work,
): boolean {
  const { lengths, stock } = plan.problem;
  const values = lengths.map((length, item) => length * weigh(item));
  while (!plan.done) {
    const longest = plan.left.findIndex((count) => count > 0);
    const limits = plan.left.slice();
    limits[longest] = limits[longest]! - 1;
    let best: { stock: number; counts: number[]; waste: number } | null = null;
    for (const bar of stock) {
      const room = bar.capacity - lengths[longest]!;
      if (room < 0 || plan.limits.get(bar.index)! <= 0) continue;
      const { counts, nodes } = fillBar(values, lengths, limits, room, NODES);
      work.done += STEPS_PER_NODE * nodes + lengths.length;
      counts[longest] = counts[longest]! + 1;
      const used = counts.reduce((sum, count, item) => sum + count * lengths[item]!, 0);
      const waste = (bar.cost / used) * weighStock();
      if (best === null || waste < best.waste) best = { stock: bar.index, counts, waste };
    }
    if (best === null) return false;
    if (plan.use(best, Number.POSITIVE_INFINITY) === 0) return false;
  }
  return true;
}
