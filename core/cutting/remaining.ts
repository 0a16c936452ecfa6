import type { SolverPattern, SolverProblem, SolverUse } from "./cutting-stock";

/** What is still to be cut, and the stock still at hand, while a whole plan is being put together. */
export class Remaining {
  readonly left: number[];
  readonly limits: Map<number, number>;
  readonly uses: SolverUse[] = [];
  cost = 0;

  constructor(
    readonly problem: SolverProblem,
    from?: Remaining,
  ) {
    this.left = (from?.left ?? problem.demand).slice();
    this.limits = new Map(from?.limits ?? problem.stock.map((bar) => [bar.index, bar.limit]));
    if (from !== undefined) {
      for (const use of from.uses) this.uses.push(use);
      this.cost = from.cost;
    }
  }

  get done(): boolean {
    return this.left.every((count) => count === 0);
  }

  /** Uses a pattern as often as demand and stock allow, at most `times`; gives how often. */
  use(pattern: SolverPattern, times: number): number {
    let most = Math.min(times, this.limits.get(pattern.stock) ?? 0);
    pattern.counts.forEach((count, item) => {
      if (count > 0) most = Math.min(most, Math.floor(this.left[item]! / count));
    });
    if (most <= 0 || pattern.counts.every((count) => count === 0)) return 0;
    pattern.counts.forEach((count, item) => {
      this.left[item] = this.left[item]! - count * most;
    });
    this.limits.set(pattern.stock, this.limits.get(pattern.stock)! - most);
    this.cost += most * this.problem.stock.find((bar) => bar.index === pattern.stock)!.cost;
    this.uses.push({ pattern, times: most });
    return most;
  }

  /** Uses a pattern once, leaving out the pieces that are no longer asked for. */
  useTrimmed(pattern: SolverPattern): boolean {
    const counts = pattern.counts.map((count, item) => Math.min(count, this.left[item]!));
    return this.use({ stock: pattern.stock, counts }, 1) === 1;
  }
}
