import { Basis, type Column } from "./basis";
import type { SolverPattern, SolverProblem, SolverStock } from "./cutting-stock";
import { type Filling, fillBar } from "./fill-bar";
import { commonMeasure, fillByTable } from "./fill-by-table";

/** The fractional optimum: patterns with how often, and a bound that no whole plan can beat. */
export interface Relaxation {
  readonly uses: readonly { readonly pattern: SolverPattern; readonly times: number }[];
  /** ticks of cost; valid also where the search was cut short */
  readonly bound: number;
  /** pieces that the limited stock cannot serve even in fractions */
  readonly unserved: boolean;
  readonly complete: boolean;
}

interface PatternColumn extends Column {
  readonly pattern: SolverPattern | null;
}

const NODES = 4_000;
const IMPROVEMENT = 1e-9;
/** cells times items below which the exact table is quicker than the search */
const SMALL_TABLE = 200_000;

/**
 * Solves the linear relaxation of Gilmore and Gomory (Operations Research 9, 1961) by column
 * generation: a revised simplex over patterns, priced by filling one bar. Patterns never hold more
 * of an item than is asked for, which makes the bound tighter. Stops at `deadline` (ms since epoch)
 * with a bound that still holds (dual prices scaled until no bar can be filled for more than it costs).
 */
export function relax(problem: SolverProblem, deadline: number): Relaxation {
  const items = problem.lengths.length;
  const limited = problem.stock.filter((bar) => Number.isFinite(bar.limit));
  const limitRow = new Map(limited.map((bar, k) => [bar.index, items + k]));
  const right = [...problem.demand, ...limited.map((bar) => bar.limit)];
  const basis = new Basis(startingColumns(problem, limited), right);
  const pricing = new Pricing(problem);
  const measure = commonMeasure([...problem.lengths, ...problem.stock.map((bar) => bar.capacity)]);
  let bound = 0;
  let complete = false;
  for (let pivots = 0; pivots < 50_000; pivots += 1) {
    const duals = basis.duals();
    const column = surplusColumn(duals, items, right.length) ?? pricing.improving(duals, limitRow, measure);
    if (column === null) {
      complete = true;
      bound = Math.max(bound, dualBound(duals, problem, pricing.worth));
      break;
    }
    if (Date.now() > deadline) {
      pricing.improving(duals, limitRow, measure, true);
      bound = Math.max(bound, dualBound(duals, problem, pricing.worth));
      break;
    }
    if (!basis.enter(column)) break;
  }
  const uses: { pattern: SolverPattern; times: number }[] = [];
  let unserved = false;
  basis.columns.forEach((column, i) => {
    const times = basis.amounts[i]!;
    const { pattern } = column as PatternColumn;
    if (times <= IMPROVEMENT) return;
    if (pattern !== null) uses.push({ pattern, times });
    else if (column.cost > 0 && times > 1e-6) unserved = true;
  });
  return { uses, bound, unserved, complete };
}

/** One column an item: on the cheapest unlimited bar that holds it, else an unserved piece at a forbidding cost. */
function startingColumns(problem: SolverProblem, limited: readonly SolverStock[]): PatternColumn[] {
  const forbidding = 1e3 * Math.max(...problem.stock.map((bar) => Math.max(bar.cost, bar.capacity)));
  const columns = problem.lengths.map((length, item): PatternColumn => {
    const holder = problem.stock
      .filter((bar) => !Number.isFinite(bar.limit) && bar.capacity >= length)
      .sort((a, b) => a.cost - b.cost)[0];
    if (holder === undefined) return { rows: [item], values: [1], cost: forbidding, pattern: null };
    const count = Math.min(problem.demand[item]!, Math.floor(holder.capacity / length));
    const counts = problem.lengths.map((_, other) => (other === item ? count : 0));
    return { rows: [item], values: [count], cost: holder.cost, pattern: { stock: holder.index, counts } };
  });
  const slacks = limited.map(
    (_, k): PatternColumn => ({
      rows: [problem.lengths.length + k],
      values: [1],
      cost: 0,
      pattern: null,
    }),
  );
  return [...columns, ...slacks];
}

/** A piece too many (its price fell below 0) or a limited bar left over (its price rose above 0). */
function surplusColumn(duals: Float64Array, items: number, rows: number): PatternColumn | null {
  for (let row = 0; row < rows; row += 1) {
    const sign = row < items ? -1 : 1;
    if (duals[row]! * sign > 1e-7 * Math.max(1, Math.abs(duals[row]!))) {
      return { rows: [row], values: [sign], cost: 0, pattern: null };
    }
  }
  return null;
}

/**
 * A bound from any prices: they are scaled until no bar that there is without limit is worth more than it
 * costs; a limited bar that still is takes what it is worth too much off, once for each. Their total is a
 * bound, for these are prices that the dual of the relaxation allows.
 */
function dualBound(duals: Float64Array, { demand, stock }: SolverProblem, worth: readonly number[]): number {
  let scale = 1;
  stock.forEach((bar, at) => {
    if (!Number.isFinite(bar.limit)) scale = Math.max(scale, worth[at]! / Math.max(bar.cost, 1e-12));
  });
  let total = 0;
  demand.forEach((count, item) => {
    total += (Math.max(0, duals[item]!) / scale) * count;
  });
  stock.forEach((bar, at) => {
    if (Number.isFinite(bar.limit)) total -= bar.limit * Math.max(0, worth[at]! / scale - bar.cost);
  });
  return total * (1 - 1e-10);
}

class Pricing {
  /** what the pieces of each bar can be worth at most at the prices last asked for */
  worth: number[] = [];

  constructor(private readonly problem: SolverProblem) {}

  /** The pattern whose pieces are worth most above the bar's cost, or null where none is. */
  improving(
    duals: Float64Array,
    limitRow: ReadonlyMap<number, number>,
    measure: number,
    onlyBound = false,
  ): PatternColumn | null {
    const { lengths, demand, stock } = this.problem;
    const values = lengths.map((_, item) => Math.max(0, duals[item]!));
    let best: { filling: Filling; bar: SolverStock; gain: number } | null = null;
    this.worth = [];
    for (const bar of stock) {
      const row = limitRow.get(bar.index);
      const price = bar.cost - (row === undefined ? 0 : Math.min(0, duals[row]!));
      const enough = price + IMPROVEMENT * Math.max(1, bar.cost);
      let filling =
        (bar.capacity / measure) * lengths.length < SMALL_TABLE
          ? fillByTable(values, lengths, demand, bar.capacity, measure)
          : fillBar(values, lengths, demand, bar.capacity, NODES);
      if (filling.upperBound > enough && (filling.value <= enough || onlyBound)) {
        const table = fillByTable(values, lengths, demand, bar.capacity, measure);
        filling = table.exact ? table : { ...filling, upperBound: table.upperBound };
      }
      this.worth.push(filling.upperBound);
      const gain = (filling.value - price) / Math.max(bar.cost, 1);
      if (filling.value > enough && (best === null || gain > best.gain)) best = { filling, bar, gain };
    }
    if (best === null) return null;
    return patternColumn({ stock: best.bar.index, counts: best.filling.counts }, best.bar.cost, limitRow);
  }
}

function patternColumn(
  pattern: SolverPattern,
  cost: number,
  limitRow: ReadonlyMap<number, number>,
): PatternColumn {
  const rows: number[] = [];
  const values: number[] = [];
  pattern.counts.forEach((count, item) => {
    if (count === 0) return;
    rows.push(item);
    values.push(count);
  });
  const row = limitRow.get(pattern.stock);
  if (row !== undefined) {
    rows.push(row);
    values.push(1);
  }
  return { rows, values, cost, pattern };
}
