import type { SolverProblem, SolverStock } from "./cutting-stock";
import { type Filling, fillBar } from "./fill-bar";
import { commonMeasure, fillByTable } from "./fill-by-table";
import type { Work } from "./work";

const NODES = 4_000;
/** cells times items below which the exact table is quicker than the search */
const SMALL_TABLE = 400_000;
/** a cell of the table costs more than a step of the simplex */
const STEPS_PER_CELL = 2;

export interface Offer {
  readonly stock: SolverStock;
  readonly filling: Filling;
  /** what the pieces are worth beyond what the bar costs */
  readonly gain: number;
}

/** Finds the fillings of one bar that are worth most at given prices of the pieces. */
export class BarPricing {
  /** what the pieces of each stock's bar can be worth at most at the prices last asked for */
  readonly worth: number[];
  private readonly measure: number;

  constructor(
    private readonly problem: SolverProblem,
    private readonly work: Work,
  ) {
    this.measure = commonMeasure([...problem.lengths, ...problem.stock.map((bar) => bar.capacity)]);
    this.worth = problem.stock.map(() => 0);
  }

  /** The best filling of each stock that is worth more than the bar costs (`costs` by place in the stock). */
  offers(
    values: readonly number[],
    demand: readonly number[],
    costs: readonly number[],
    isExact: boolean,
  ): Offer[] {
    const found: Offer[] = [];
    this.problem.stock.forEach((stock, at) => {
      const cost = costs[at]!;
      if (!Number.isFinite(cost)) {
        this.worth[at] = 0;
        return;
      }
      const enough = cost + 1e-9 * Math.max(1, stock.cost);
      const filling = this.fill(values, demand, stock.capacity, enough, isExact);
      this.worth[at] = filling.upperBound;
      if (filling.value > enough) found.push({ stock, filling, gain: filling.value - cost });
    });
    return found.sort((a, b) => b.gain / Math.max(1, b.stock.cost) - a.gain / Math.max(1, a.stock.cost));
  }

  private fill(
    values: readonly number[],
    demand: readonly number[],
    capacity: number,
    enough: number,
    isExact: boolean,
  ): Filling {
    const { lengths } = this.problem;
    const cells = capacity / this.measure;
    let wanted = 0;
    for (let item = 0; item < values.length; item += 1)
      if (values[item]! > 0 && demand[item]! > 0) wanted += 1;
    if (cells * wanted < SMALL_TABLE) {
      this.work.done += cells * wanted * STEPS_PER_CELL;
      return fillByTable(values, lengths, demand, capacity, this.measure);
    }
    const quick = fillBar(values, lengths, demand, capacity, NODES);
    this.work.done += quick.nodes * 20;
    const isSettled = quick.upperBound <= enough || (quick.value > enough && !isExact);
    if (isSettled) return quick;
    this.work.done += Math.min(cells, 200_000) * wanted * STEPS_PER_CELL;
    const table = fillByTable(values, lengths, demand, capacity, this.measure);
    return table.exact ? table : { ...quick, upperBound: Math.min(quick.upperBound, table.upperBound) };
  }
}
