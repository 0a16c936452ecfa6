import { completeByFullestBar } from "./complete-plan";
import type { SolverProblem, SolverUse } from "./cutting-stock";
import { Remaining } from "./remaining";
import type { Work } from "./work";

const ROUNDS = 4_000;
const MOST_TAKEN = 6;

/**
 * Improves a plan by taking a few bars out and cutting their pieces anew, other pieces first each
 * time; a swap that costs no more is kept, so that the plan can wander towards a cheaper one.
 */
export function improvePlan(
  problem: SolverProblem,
  start: readonly SolverUse[],
  goal: number,
  work: Work,
  random: () => number,
): readonly SolverUse[] {
  let uses = start.slice();
  const costOf = new Map(problem.stock.map((bar) => [bar.index, bar.cost]));
  let cost = uses.reduce((sum, use) => sum + use.times * costOf.get(use.pattern.stock)!, 0);
  for (let round = 0; round < ROUNDS && cost > goal + 1e-6 && work.allows(); round += 1) {
    const taken = takeBars(uses, 2 + Math.floor(random() * (MOST_TAKEN - 1)), random);
    const anew = new Remaining(problem);
    anew.left.fill(0);
    let takenCost = 0;
    for (const bar of problem.stock) anew.limits.set(bar.index, bar.limit);
    for (const use of taken.kept)
      anew.limits.set(use.pattern.stock, anew.limits.get(use.pattern.stock)! - use.times);
    for (const { pattern, times } of taken.out) {
      takenCost += times * costOf.get(pattern.stock)!;
      pattern.counts.forEach((count, item) => {
        anew.left[item] = anew.left[item]! + count * times;
      });
    }
    const weights = problem.lengths.map(() => 1 + 0.3 * (random() - 0.5));
    const liking = (): number => 1 + 0.25 * random();
    const isComplete = completeByFullestBar(anew, (item) => weights[item]!, liking, work);
    if (!isComplete || anew.cost > takenCost + 1e-6) continue;
    uses = [...taken.kept, ...anew.uses];
    cost += anew.cost - takenCost;
  }
  return uses;
}

/** Takes single bars out of the plan at random, whole patterns where they are used once. */
function takeBars(uses: readonly SolverUse[], bars: number, random: () => number) {
  const kept = uses.slice();
  const out: SolverUse[] = [];
  for (let bar = 0; bar < bars && kept.length > 0; bar += 1) {
    const place = Math.floor(random() * kept.length);
    const use = kept[place]!;
    out.push({ pattern: use.pattern, times: 1 });
    if (use.times > 1) kept[place] = { pattern: use.pattern, times: use.times - 1 };
    else kept.splice(place, 1);
  }
  return { kept, out };
}
