import { byFullBars } from "./by-full-bars";
import { completeByFirstFit, completeByFullestBar } from "./complete-plan";
import type { SolverProblem, SolverUse } from "./cutting-stock";
import { improvePlan } from "./improve-plan";
import { PatternMaster, type Relaxed } from "./pattern-master";
import { Remaining } from "./remaining";
import { searchPlan } from "./search-plan";
import type { Work } from "./work";

/** What no plan can beat, from a fractional cost that none can beat. */
export interface CostBound {
  /** ticks of cost; reaching it ends the search */
  readonly goal: number;
  /** ticks of cost between two plans' costs; 0 where they differ by any amount */
  readonly step: number;
}

export interface LeastPlan<Bound> {
  /** null where the stock at hand does not suffice */
  readonly uses: readonly SolverUse[] | null;
  readonly bound: Bound;
}

/** fillings by which the first plans are made, each with other weights */
const FIRST_PLANS = 6;
/** lengths below which the relaxation is quick, and tells more than a search without it */
const MANY_LENGTHS = 40;
const ROUNDING_TRIES = 120;
/** shares of the work after which each way of searching gives way to the next */
const SHARE = { relaxation: 0.8, goal: 0.9, better: 0.95 };

/**
 * The cheapest whole plan that is found: simple plans first, then one of bars that leave next to nothing
 * over where few patterns do, then the relaxation for a bound, then a dive for a plan that meets it, then for one a step better than the best, then small changes. `boundOf` raises a
 * fractional cost to what whole bars can cost.
 */
export function leastPlan<Bound extends CostBound>(
  problem: SolverProblem,
  boundOf: (fractional: number) => Bound,
  work: Work,
): LeastPlan<Bound> {
  const best = new BestPlan();
  const random = seeded();
  const master = new PatternMaster(problem, work);
  let bound = boundOf(0);
  for (let k = 0; k <= FIRST_PLANS; k += 1) {
    const plan = new Remaining(problem);
    const isComplete = k === 0 ? completeByFirstFit(plan) : fullest(plan, k === 1 ? 0 : 0.2, random, work);
    best.offer(plan, isComplete);
    if (best.meets(bound.goal)) return { uses: best.uses, bound };
    master.offer(plan.uses);
  }
  const [stock] = problem.stock;
  const isOfMany = problem.lengths.length >= MANY_LENGTHS;
  if (isOfMany && problem.stock.length === 1 && !Number.isFinite(stock!.limit) && bound.goal > 0) {
    const uses = byFullBars(problem, Math.round(bound.goal / stock!.cost), random, work);
    if (uses !== null) return { uses, bound };
  }
  work.upTo(SHARE.relaxation);
  let ended: Relaxed = "beyond";
  let fractional = 0;
  while (ended === "beyond") {
    ended = master.solve(bound.goal > 0 ? bound.goal : null);
    fractional = Math.max(fractional, master.bound);
    bound = boundOf(fractional);
    if (best.meets(bound.goal)) return { uses: best.uses, bound };
  }
  if (ended === "cut short") return { uses: best.uses, bound };
  if (master.unserved) return { uses: null, bound };
  const uses = master.uses();
  for (const ups of [0, 1, 2, Math.ceil(uses.length / 2), uses.length]) {
    const plan = rounded(problem, uses, ups, null);
    best.offer(plan, completeByFirstFit(plan));
    if (best.meets(bound.goal)) return { uses: best.uses, bound };
  }
  dive(master, best, bound, random, work);
  if (!best.meets(bound.goal)) wander(problem, uses, best, bound.goal, random, work);
  return { uses: best.uses, bound };
}

/** A plan that meets the bound, else better ones a step at a time. */
function dive(
  master: PatternMaster,
  best: BestPlan,
  bound: CostBound,
  random: () => number,
  work: Work,
): void {
  const root = master.simplex.basis.slice();
  const search = (cost: number, share: number): boolean => {
    work.upTo(share);
    const whole = new Remaining(master.problem);
    master.returnTo(whole.left, whole.limits, root);
    const uses = searchPlan(master, cost, random, work);
    if (uses !== null) best.take(uses, master.problem);
    return uses !== null;
  };
  if (bound.goal > 0 && search(bound.goal, SHARE.goal)) return;
  for (;;) {
    const cost = best.cost - Math.max(1, bound.step);
    if (!(cost > bound.goal + 1e-6) || !search(cost, SHARE.better)) return;
  }
}

/** Rounds the relaxation at random, then changes a few bars at a time. */
function wander(
  problem: SolverProblem,
  fractional: ReturnType<PatternMaster["uses"]>,
  best: BestPlan,
  goal: number,
  random: () => number,
  work: Work,
): void {
  work.upTo(1);
  for (let attempt = 0; attempt < ROUNDING_TRIES && work.allows(); attempt += 1) {
    const isFromScratch = attempt % 4 === 3;
    const ups = Math.floor(random() * fractional.length * 0.7);
    const plan = isFromScratch ? new Remaining(problem) : rounded(problem, fractional, ups, random);
    best.offer(plan, fullest(plan, 0.2, random, work));
    if (best.meets(goal)) return;
  }
  if (best.uses !== null) best.take(improvePlan(problem, best.uses, goal, work, random), problem);
}

/** Keeps each pattern's whole part, and rounds up those with the largest fractions. */
function rounded(
  problem: SolverProblem,
  uses: ReturnType<PatternMaster["uses"]>,
  ups: number,
  random: (() => number) | null,
): Remaining {
  const plan = new Remaining(problem);
  for (const { pattern, times } of uses) plan.use(pattern, Math.floor(times + 1e-7));
  const fraction = (times: number): number => times - Math.floor(times + 1e-7);
  const byFraction = uses
    .map((use) => ({ use, rank: fraction(use.times) + (random === null ? 0 : random() * 0.5) }))
    .filter(({ use }) => fraction(use.times) > 1e-6)
    .sort((a, b) => b.rank - a.rank);
  for (const { use } of byFraction.slice(0, ups)) plan.useTrimmed(use.pattern);
  return plan;
}

function fullest(plan: Remaining, spread: number, random: () => number, work: Work): boolean {
  const weights = plan.problem.lengths.map(() => 1 + spread * (random() - 0.5));
  return completeByFullestBar(
    plan,
    (item) => weights[item]!,
    () => 1,
    work,
  );
}

class BestPlan {
  uses: readonly SolverUse[] | null = null;
  cost = Number.POSITIVE_INFINITY;

  offer(plan: Remaining, isComplete: boolean): void {
    if (!isComplete || !plan.done || plan.cost >= this.cost - 1e-6) return;
    this.cost = plan.cost;
    this.uses = plan.uses;
  }

  take(uses: readonly SolverUse[], problem: SolverProblem): void {
    const costs = new Map(problem.stock.map((bar) => [bar.index, bar.cost]));
    const cost = uses.reduce((sum, { pattern, times }) => sum + times * costs.get(pattern.stock)!, 0);
    if (cost >= this.cost - 1e-6) return;
    this.cost = cost;
    this.uses = uses;
  }

  meets(goal: number): boolean {
    return this.cost <= goal + 1e-6;
  }
}

function seeded(): () => number {
  let seed = 12_345;
  return () => {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) >>> 0;
    return seed / 4_294_967_296;
  };
}
