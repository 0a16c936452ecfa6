import { coverExactly } from "./cover-exactly";
import type { SolverProblem } from "./cutting-stock";
import { EvenShares } from "./even-shares";
import { fullPatterns, type ShortPattern } from "./full-patterns";
import type { Work } from "./work";

/** bars' worth of pieces left at which the patterns are listed anew, other ones each time, and at which what is left is searched through */
const LEFT = { anew: { least: 45, most: 80 }, through: 22 };
/** patterns listed of what is left at each stage */
const MOST = { first: 16_000, anew: 8_000, through: 4_000 };
/** descents from each list made anew */
const DESCENTS = 20;
const CHOICES = 1_000;
/** least share of the patterns of fewer pieces than most that are fixed first */
const SHORT_FIRST = 0.7;

/** Pieces left of a problem as one of their own; `items` are their places in it. */
interface Rest {
  readonly problem: SolverProblem;
  readonly items: readonly number[];
}

/**
 * Full bars for all pieces, in three stages: by even shares until some tens of bars are left, from a list made
 * anew until few are, and those by trying through. Of few pieces every pattern can be listed, those of many
 * pieces too, which at first are far too many: where bars of fewer pieces suffice the first list leaves them
 * out, and bars of very few pieces make room for them. Null where none are found before the work ends.
 */
export function fullBarsInStages(
  problem: SolverProblem,
  bars: number,
  random: () => number,
  work: Work,
): readonly ShortPattern[] | null {
  const { demand, stock } = problem;
  const perBar = demand.reduce((sum, count) => sum + count, 0) / bars;
  const all: Rest = { problem, items: demand.map((_, item) => item) };
  if (bars <= LEFT.anew.most) return finish(all, perBar, Number.POSITIVE_INFINITY, random, work);
  const { patterns, isWhole } = fullPatterns(problem, stock[0]!.capacity, MOST.first, work, perBar);
  const shares = new EvenShares(patterns, problem, 0, work);
  const short = patterns.flatMap((pattern, at) => (piecesOf(pattern) < Math.floor(perBar) ? [at] : []));
  while (work.allows()) {
    const asked = isWhole ? [] : some(short, SHORT_FIRST + (1 - SHORT_FIRST) * random(), random);
    const rest = LEFT.anew.least + (LEFT.anew.most - LEFT.anew.least) * random();
    const used = shares.descend(random, asked, rest * perBar);
    const found = finish(restOf(all, shares.left), perBar, DESCENTS, random, work);
    if (found !== null) return [...used.map((at) => patterns[at]!), ...found];
  }
  return null;
}

function finish(
  rest: Rest,
  perBar: number,
  descents: number,
  random: () => number,
  work: Work,
): ShortPattern[] | null {
  const { problem } = rest;
  const { capacity } = problem.stock[0]!;
  const { patterns } = fullPatterns(problem, capacity, MOST.anew, work);
  const shares = new EvenShares(patterns, problem, 0, work);
  for (let descent = 0; descent < descents && work.allows(); descent += 1) {
    const used = shares.descend(random, [], LEFT.through * perBar);
    const last = restOf(rest, shares.left);
    const lastPatterns = fullPatterns(last.problem, capacity, MOST.through, work).patterns;
    const places = coverExactly(lastPatterns, last.problem.demand, CHOICES, random, work);
    if (places === null) continue;
    return [
      ...used.map((at) => inWhole(patterns[at]!, rest)),
      ...places.map((at) => inWhole(lastPatterns[at]!, last)),
    ];
  }
  return null;
}

function restOf({ problem, items }: Rest, left: ArrayLike<number>): Rest {
  const places = items.flatMap((_, place) => (left[place]! > 0 ? [place] : []));
  return {
    problem: {
      ...problem,
      lengths: places.map((place) => problem.lengths[place]!),
      demand: places.map((place) => left[place]!),
    },
    items: places.map((place) => items[place]!),
  };
}

function inWhole({ items, counts }: ShortPattern, rest: Rest): ShortPattern {
  return { items: items.map((item) => rest.items[item]!), counts };
}

function piecesOf({ counts }: ShortPattern): number {
  return counts.reduce((sum, count) => sum + count, 0);
}

/** This share of the places, in another order each time. */
function some(places: readonly number[], share: number, random: () => number): number[] {
  const order = places.map((place) => ({ place, rank: random() })).sort((a, b) => a.rank - b.rank);
  return order.slice(0, Math.round(places.length * share)).map(({ place }) => place);
}
