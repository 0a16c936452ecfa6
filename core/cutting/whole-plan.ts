import { completeByFirstFit, completeByFullestBar } from "./complete-plan";
import type { SolverProblem, SolverUse } from "./cutting-stock";
import { improvePlan } from "./improve-plan";
import { type Relaxation, relax } from "./relaxation";
import { Remaining } from "./remaining";

const TRIES = 120;
const EVEN = (): number => 1;

/**
 * Turns the fractional optimum into whole bars: the whole parts are kept, the rest is finished in
 * several ways, and the cheapest plan is taken; `goal` is a cost that none can beat, so reaching it
 * ends the search. Gives null where the stock at hand does not suffice.
 */
export function wholePlan(
  problem: SolverProblem,
  relaxation: Relaxation,
  goal: number,
  deadline: number,
): readonly SolverUse[] | null {
  let best: Remaining | null = null;
  const offer = (plan: Remaining, isComplete: boolean): boolean => {
    if (isComplete && plan.done && (best === null || plan.cost < best.cost - 1e-6)) best = plan;
    return best !== null && best.cost <= goal + 1e-6;
  };
  const finish = (plan: Remaining): boolean => {
    const byFirstFit = new Remaining(problem, plan);
    if (offer(byFirstFit, completeByFirstFit(byFirstFit))) return true;
    const byFullest = new Remaining(problem, plan);
    return offer(byFullest, completeByFullestBar(byFullest, EVEN));
  };
  const result = (): readonly SolverUse[] | null => (best as Remaining | null)?.uses ?? null;

  if (finish(new Remaining(problem))) return result();
  if (finish(wholeParts(problem, relaxation))) return result();
  for (let ups = 1; ups <= relaxation.uses.length && Date.now() < deadline; ups += 1) {
    if (finish(wholeParts(problem, relaxation, ups))) return result();
  }
  if (finish(dive(problem, relaxation, deadline))) return result();
  let seed = 12_345;
  const random = (): number => {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) >>> 0;
    return seed / 4_294_967_296;
  };
  for (let attempt = 0; attempt < TRIES && Date.now() < deadline; attempt += 1) {
    const isFromScratch = attempt % 4 === 3;
    const ups = Math.floor(random() * relaxation.uses.length * 0.7);
    const plan = isFromScratch ? new Remaining(problem) : wholeParts(problem, relaxation, ups, random);
    const weights = problem.lengths.map(() => 1 + 0.2 * (random() - 0.5));
    const isComplete = completeByFullestBar(plan, (item) => weights[item]!);
    if (offer(plan, isComplete)) return result();
  }
  const uses = result();
  return uses === null ? null : improvePlan(problem, uses, goal, deadline, random);
}

/** Keeps each pattern's whole part, and rounds up those with the largest fractions. */
function wholeParts(
  problem: SolverProblem,
  relaxation: Relaxation,
  ups = 0,
  random?: () => number,
): Remaining {
  const plan = new Remaining(problem);
  for (const { pattern, times } of relaxation.uses) plan.use(pattern, Math.floor(times + 1e-7));
  const fraction = (times: number): number => times - Math.floor(times + 1e-7);
  const byFraction = relaxation.uses
    .map((use) => ({ use, rank: fraction(use.times) + (random === undefined ? 0 : random() * 0.5) }))
    .filter(({ use }) => fraction(use.times) > 1e-6)
    .sort((a, b) => b.rank - a.rank);
  for (const { use } of byFraction.slice(0, ups)) plan.useTrimmed(use.pattern);
  return plan;
}

/** Solves the relaxation anew for what is left, fixing at least one bar each time. */
function dive(problem: SolverProblem, relaxation: Relaxation, deadline: number): Remaining {
  const plan = new Remaining(problem);
  let uses = relaxation.uses;
  while (!plan.done && uses.length > 0) {
    let fixed = 0;
    for (const { pattern, times } of uses) fixed += plan.use(pattern, Math.floor(times + 1e-7));
    if (fixed === 0) {
      const largest = uses.reduce((most, use) => (use.times > most.times ? use : most));
      if (!plan.useTrimmed(largest.pattern)) break;
    }
    if (plan.done || Date.now() > deadline) break;
    const stock = problem.stock.map((bar) => ({ ...bar, limit: plan.limits.get(bar.index)! }));
    const kept = plan.left.flatMap((count, item) => (count > 0 ? [item] : []));
    const rest = relax(
      {
        lengths: kept.map((item) => problem.lengths[item]!),
        demand: kept.map((item) => plan.left[item]!),
        stock: stock.filter((bar) => bar.limit > 0),
      },
      deadline,
    );
    uses = rest.uses.map((use) => {
      const counts = problem.lengths.map(() => 0);
      kept.forEach((item, place) => {
        counts[item] = use.pattern.counts[place]!;
      });
      return { pattern: { stock: use.pattern.stock, counts }, times: use.times };
    });
  }
  return plan;
}
