import type { SolverPattern, SolverUse } from "./cutting-stock";
import type { PatternMaster } from "./pattern-master";
import { Remaining } from "./remaining";
import type { Work } from "./work";

/** steps off the first choice that one descent may take */
const DISCREPANCIES = 3;
/** choices tried at one place */
const WIDTH = 3;
/** choices taken back before the search starts anew with other preferences: luck runs out in one corner */
const TAKEN_BACK = 30;
const DESCENTS = 200;
/** how far preferences are shaken, against uses from 0 to 1 */
const SHAKEN = 0.35;

interface Place {
  readonly plan: Remaining;
  readonly basis: Int32Array;
  readonly choices: readonly SolverPattern[];
  readonly tried: number;
  readonly discrepancies: number;
}

/**
 * Looks for a whole plan of this cost at most, in descents with other preferences each; null where none was
 * found or the work ran out.
 */
export function searchPlan(
  master: PatternMaster,
  goal: number,
  random: () => number,
  work: Work,
): readonly SolverUse[] | null {
  const root = master.simplex.basis.slice();
  const whole = new Remaining(master.problem);
  for (let descent = 0; descent < DESCENTS && work.allows(); descent += 1) {
    if (descent > 0) master.returnTo(whole.left, whole.limits, root);
    const uses = descend(master, goal, descent === 0 ? () => 0 : random, work);
    if (uses !== null) return uses;
  }
  return null;
}

/**
 * Looks for a whole plan of this cost by diving: the pattern that the relaxation uses most is fixed, what
 * is left is relaxed anew, and a choice after which no plan of the cost can follow is taken back for the
 * next best one (limited discrepancy search, Harvey and Ginsberg, IJCAI 1995).
 */
function descend(
  master: PatternMaster,
  goal: number,
  random: () => number,
  work: Work,
): readonly SolverUse[] | null {
  const places: Place[] = [];
  let plan = new Remaining(master.problem);
  let discrepancies = 0;
  let takenBack = 0;
  let isOpen = enter(master, plan, goal);
  for (;;) {
    if (plan.done) return plan.uses;
    if (!work.allows()) return null;
    if (isOpen) {
      fixWhole(master, plan);
      if (plan.done) return plan.cost <= goal + 1e-6 ? plan.uses : null;
      places.push({
        plan,
        basis: master.simplex.basis.slice(),
        choices: choicesOf(master, plan, random),
        tried: 0,
        discrepancies,
      });
    }
    const next = advance(places);
    if (next === null) return null;
    const { place, choice } = next;
    if (!isOpen) {
      takenBack += 1;
      if (takenBack > TAKEN_BACK) return null;
      master.returnTo(place.plan.left, place.plan.limits, place.basis);
    }
    plan = new Remaining(master.problem, place.plan);
    discrepancies = place.discrepancies + (place.tried > 0 ? 1 : 0);
    isOpen = plan.useTrimmed(choice) && enter(master, plan, goal);
  }
}

/** The deepest place with a choice left that the discrepancies allow. */
function advance(places: Place[]): { place: Place; choice: SolverPattern } | null {
  for (let place = places.pop(); place !== undefined; place = places.pop()) {
    const choice = place.choices[place.tried];
    if (choice === undefined || place.tried >= WIDTH) continue;
    if (place.discrepancies + (place.tried > 0 ? 1 : 0) > DISCREPANCIES) continue;
    places.push({ ...place, tried: place.tried + 1 });
    return { place, choice };
  }
  return null;
}

function enter(master: PatternMaster, plan: Remaining, goal: number): boolean {
  if (plan.done) return plan.cost <= goal + 1e-6;
  if (plan.cost >= goal - 1e-6) return false;
  master.leave(plan.left, plan.limits);
  const ended = master.solve(goal - plan.cost);
  return ended === "reached";
}

/** Whole parts stay as they are: taking them off leaves the relaxation at its least. */
function fixWhole(master: PatternMaster, plan: Remaining): void {
  let isFixed = false;
  for (const { pattern, times } of master.uses()) {
    const whole = Math.floor(times + 1e-6);
    if (whole > 0 && plan.use(pattern, whole) > 0) isFixed = true;
  }
  if (isFixed && !plan.done) master.leave(plan.left, plan.limits);
}

function choicesOf(master: PatternMaster, plan: Remaining, random: () => number): SolverPattern[] {
  const { lengths } = master.problem;
  const used = (pattern: SolverPattern): number =>
    pattern.counts.reduce((sum, count, item) => sum + Math.min(count, plan.left[item]!) * lengths[item]!, 0);
  return master
    .uses()
    .map(({ pattern, times }) => ({ pattern, rank: times + SHAKEN * random(), used: used(pattern) }))
    .sort((a, b) => b.rank - a.rank || b.used - a.used)
    .slice(0, WIDTH)
    .map(({ pattern }) => pattern);
}
