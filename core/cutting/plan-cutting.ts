import { defineRefusal, type Refusal } from "../units/refusal";
import type { CuttingPattern, CuttingPlan } from "./cutting-plan";
import { type CuttingQuestion, questionRefusal } from "./cutting-question";
import { type SolverProblem, type SolverUse, solverProblem, TICKS_PER_MM } from "./cutting-stock";
import { fewerPatterns } from "./fewer-patterns";
import { commonMeasure } from "./fill-by-table";
import { cheapestHolder, firstFit } from "./first-fit";
import { type CostBound, leastPlan } from "./least-plan";
import { Work } from "./work";

const runsOut = defineRefusal(
  "stock-runs-out",
  "value",
  "the stock named does not suffice for {pieces} pieces of {length} mm in all: add bars or raise a count",
);

/**
 * A cutting plan for one size and grade: the patterns, the stock they take, and the bound that no
 * plan can beat, so that the reader knows whether it is the least. Never worse than first-fit.
 *
 * Lengths in mm. Refuses lengths and counts that are none, pieces longer than the stock gives, and
 * demand beyond a limited stock; it never splits a bar. Bound: Gilmore and Gomory, Operations
 * Research 9 (1961).
 *
 * @example
 * planCutting({ pieces: [{ length: 4000, count: 30 }], stock: [{ length: 12000, count: null, remnant: false }],
 *   endCrop: 0, kerf: 0, timeLimit: 1000 });   // 10 bars, proven least
 */
export function planCutting(question: CuttingQuestion): CuttingPlan | Refusal {
  const refusal = questionRefusal(question);
  if (refusal !== null) return refusal;
  const problem = solverProblem(question);
  if (problem.lengths.length === 0) return emptyPlan();
  const work = new Work(question.timeLimit * STEPS_PER_MS, Date.now() + question.timeLimit);
  const { uses, bound } = leastPlan(problem, (cost) => boundOf(problem, question, cost), work);
  if (uses === null) return stockRunsOut(question.pieces);
  const shorter = onShortestStock(problem, uses);
  const comparison = firstFit(problem);
  return printPlan(question, problem, fewerPatterns(problem, shorter), bound, comparison, work);
}

/** steps of a search that take about a millisecond at most, so that work ends it well before the clock does */
const STEPS_PER_MS = 600_000;

interface Bound extends CostBound {
  readonly lowerBound: number;
  readonly boundIn: "bars" | "mm";
}

/** The fractional bound, raised to what whole bars can cost. */
function boundOf(problem: SolverProblem, question: CuttingQuestion, fractional: number): Bound {
  const sold = problem.stock.filter((bar) => !question.stock[bar.index]!.remnant);
  const remnantGrains = problem.stock
    .filter((bar) => question.stock[bar.index]!.remnant)
    .reduce((sum, bar) => sum + bar.cost * bar.limit, 0);
  const byLength = pieceLength(problem) * Math.min(...problem.stock.map((bar) => bar.cost / bar.capacity));
  const cost = Math.max(fractional, byLength * (1 - 1e-12));
  const bought = Math.max(
    0,
    cost - (Number.isFinite(remnantGrains) ? remnantGrains : cost),
    beyondRemnants(problem, question),
  );
  const step = commonMeasure(sold.map((bar) => bar.cost));
  const steps = step === 0 ? 0 : Math.ceil(bought / step - 1e-6);
  const goal = remnantGrains === 0 ? steps * step : 0;
  const isOneLength = new Set(sold.map((bar) => bar.cost)).size === 1;
  if (isOneLength) return { goal, step, lowerBound: steps, boundIn: "bars" };
  return { goal, step, lowerBound: (steps * step) / TICKS_PER_MM, boundIn: "mm" };
}

/** ticks of cost of the pieces that no remnant can hold even if all were filled to the end */
function beyondRemnants(problem: SolverProblem, question: CuttingQuestion): number {
  const isRemnant = (bar: { readonly index: number }): boolean => question.stock[bar.index]!.remnant;
  const own = problem.stock
    .filter(isRemnant)
    .reduce((sum, bar) => sum + (Number.isFinite(bar.limit) ? bar.capacity * bar.limit : Infinity), 0);
  const sold = problem.stock.filter((bar) => !isRemnant(bar));
  if (sold.length === 0) return 0;
  const rest = Math.max(0, pieceLength(problem) - own);
  return rest * Math.min(...sold.map((bar) => bar.cost / bar.capacity)) * (1 - 1e-12);
}

/** ticks of all pieces with their kerfs */
function pieceLength(problem: SolverProblem): number {
  return problem.lengths.reduce((sum, length, item) => sum + length * problem.demand[item]!, 0);
}

/** Changes a bar for a cheaper one that still holds the same cuts. */
function onShortestStock(problem: SolverProblem, uses: readonly SolverUse[]): SolverUse[] {
  const limits = new Map(problem.stock.map((bar) => [bar.index, bar.limit]));
  for (const { pattern, times } of uses) limits.set(pattern.stock, limits.get(pattern.stock)! - times);
  return uses.map((use) => {
    const { pattern, times } = use;
    const used = pattern.counts.reduce((sum, count, item) => sum + count * problem.lengths[item]!, 0);
    const own = problem.stock.find((bar) => bar.index === pattern.stock)!;
    const enough = problem.stock.filter((bar) => limits.get(bar.index)! >= times);
    const holder = cheapestHolder(enough, limits, used);
    if (holder === null || holder.cost >= own.cost) return use;
    limits.set(own.index, limits.get(own.index)! + times);
    limits.set(holder.index, limits.get(holder.index)! - times);
    return { pattern: { stock: holder.index, counts: pattern.counts }, times };
  });
}

function printPlan(
  question: CuttingQuestion,
  problem: SolverProblem,
  uses: readonly SolverUse[],
  bound: Bound,
  comparison: readonly SolverUse[] | null,
  work: Work,
): CuttingPlan {
  const kerf = Math.round(question.kerf * TICKS_PER_MM);
  const lines = uses.map(({ pattern, times }): CuttingPattern => {
    const bar = question.stock[pattern.stock]!;
    const cuts = pattern.counts.flatMap((count, item) =>
      count > 0 ? [{ length: (problem.lengths[item]! - kerf) / TICKS_PER_MM, count }] : [],
    );
    const used = pattern.counts.reduce((sum, count, item) => sum + count * problem.lengths[item]!, 0);
    const capacity = problem.stock.find((stock) => stock.index === pattern.stock)!.capacity;
    const offcut = Math.max(0, capacity - used - kerf) / TICKS_PER_MM;
    return { stock: bar.length, remnant: bar.remnant, cuts, times, offcut };
  });
  const patterns = alikeOnce(lines).sort(
    (a, b) => b.times - a.times || b.stock - a.stock || a.offcut - b.offcut,
  );
  const bars = patterns.reduce((sum, pattern) => sum + pattern.times, 0);
  const stockLength = exactSum(patterns.filter((p) => !p.remnant).map((p) => [p.stock, p.times]));
  const usedLength = exactSum(patterns.map((p) => [p.stock, p.times]));
  const cut = exactSum(patterns.flatMap((p) => p.cuts.map((c) => [c.length, c.count * p.times] as const)));
  const barsBought = patterns.filter((p) => !p.remnant).reduce((sum, p) => sum + p.times, 0);
  return {
    patterns,
    bars,
    barsBought,
    stockLength,
    usedLength,
    lowerBound: bound.lowerBound,
    boundIn: bound.boundIn,
    provenLeast: (bound.boundIn === "bars" ? barsBought : stockLength) <= bound.lowerBound + 1e-6,
    isCutShort: work.cutShort,
    effort: work.done / STEPS_PER_MS,
    pieces: problem.demand.reduce((sum, count) => sum + count, 0),
    wasteRatio: usedLength === 0 ? 0 : (usedLength - cut) / usedLength,
    firstFit: {
      bars: (comparison ?? []).reduce((sum, use) => sum + use.times, 0),
      stockLength: exactSum(
        (comparison ?? []).map((use) => {
          const bar = question.stock[use.pattern.stock]!;
          return [bar.remnant ? 0 : bar.length, use.times] as const;
        }),
      ),
    },
  };
}

/** Bars of one length cut alike as one line, though they come of two lines of stock, such as two heats. */
function alikeOnce(lines: readonly CuttingPattern[]): CuttingPattern[] {
  const byLook = new Map<string, CuttingPattern>();
  for (const line of lines) {
    const look = JSON.stringify([line.stock, line.remnant, line.cuts]);
    byLook.set(look, { ...line, times: line.times + (byLook.get(look)?.times ?? 0) });
  }
  return [...byLook.values()];
}

/** Sums in whole ticks, so that no order of adding changes a length. */
function exactSum(terms: readonly (readonly [length: number, times: number])[]): number {
  return (
    terms.reduce((sum, [length, times]) => sum + Math.round(length * TICKS_PER_MM) * times, 0) / TICKS_PER_MM
  );
}

/** That the stock does not suffice for these pieces. */
export function stockRunsOut(pieces: CuttingQuestion["pieces"]): Refusal {
  const asked = pieces.filter((piece) => piece.count > 0);
  return runsOut({
    pieces: asked.reduce((sum, piece) => sum + piece.count, 0),
    length: exactSum(asked.map((piece) => [piece.length, piece.count])),
  });
}

function emptyPlan(): CuttingPlan {
  return {
    patterns: [],
    bars: 0,
    barsBought: 0,
    stockLength: 0,
    usedLength: 0,
    lowerBound: 0,
    boundIn: "bars",
    provenLeast: true,
    isCutShort: false,
    effort: 0,
    pieces: 0,
    wasteRatio: 0,
    firstFit: { bars: 0, stockLength: 0 },
  };
}
