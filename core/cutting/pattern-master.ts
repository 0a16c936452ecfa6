import type { SolverPattern, SolverProblem, SolverStock, SolverUse } from "./cutting-stock";
import { BarPricing } from "./price-bars";
import { Simplex } from "./simplex";
import type { Work } from "./work";

interface PoolPattern {
  readonly stock: number;
  readonly items: readonly number[];
  readonly counts: readonly number[];
  readonly cost: number;
}

/** How a relaxation ended: at its least, at the cost that was asked for, proven beyond it, or out of work. */
export type Relaxed = "least" | "reached" | "beyond" | "cut short";

/** patterns sought at each set of prices, each of the pieces that the ones before left */
const AT_ONCE = 12;
const SLIGHT = 1e-6;
/** bars' cost of a piece unserved */
const FORBIDDING = 1e3;

/**
 * The relaxation of Gilmore and Gomory (Operations Research 9, 1961) for what is still to be cut: patterns
 * are made as prices ask for them and kept for later. No pattern holds more of a piece than is left, which
 * makes the bound tighter.
 */
export class PatternMaster {
  readonly simplex: Simplex;
  /** no whole plan for what is left costs less */
  bound = 0;
  private readonly patterns: (PoolPattern | null)[] = [];
  private readonly known = new Set<string>();
  private readonly limited: readonly SolverStock[];
  private readonly limitRow: ReadonlyMap<number, number>;
  /** ticks of cost that are 1 in the simplex, so that its tolerances mean the same for every question */
  private readonly scale: number;
  /** each piece unserved at a forbidding cost: feasible whatever is left */
  private readonly firstBasis: readonly number[];
  private readonly pricing: BarPricing;
  private demand: readonly number[];
  private limits: ReadonlyMap<number, number>;

  constructor(
    readonly problem: SolverProblem,
    private readonly work: Work,
  ) {
    const { lengths, stock } = problem;
    this.demand = problem.demand;
    this.limits = new Map(stock.map((bar) => [bar.index, bar.limit]));
    this.limited = stock.filter((bar) => Number.isFinite(bar.limit));
    this.limitRow = new Map(this.limited.map((bar, k) => [bar.index, lengths.length + k]));
    this.scale = Math.max(...stock.map((bar) => Math.max(bar.cost, bar.capacity)));
    this.simplex = new Simplex(this.right(), work);
    const first = lengths.map((_, item) => this.plain(item, 1, FORBIDDING));
    for (let item = 0; item < lengths.length; item += 1) this.plain(item, -1, 0);
    const slacks = this.limited.map((_, k) => this.plain(lengths.length + k, 1, 0));
    this.firstBasis = [...first, ...slacks];
    this.simplex.restart(this.firstBasis);
    this.pricing = new BarPricing(problem, work);
  }

  /** Solves for what is left: to the least, or until it is known whether that costs more than `enough`. */
  solve(enough: number | null): Relaxed {
    const { simplex } = this;
    this.bound = 0;
    for (;;) {
      if (!simplex.primal()) return "cut short";
      const cost = simplex.cost() * this.scale;
      if (enough !== null && cost <= enough * (1 + 1e-9) + SLIGHT) return "reached";
      if (!this.work.allows()) return "cut short";
      const added = this.generate();
      if (enough !== null && this.bound > enough * (1 + 1e-9) + SLIGHT) return "beyond";
      if (added === 0) return "least";
    }
  }

  /** Pieces that the limited stock cannot serve even in fractions. */
  get unserved(): boolean {
    const amounts = this.simplex.trueAmounts();
    return amounts.some(
      (amount, row) =>
        amount > 1e-6 && this.patterns[this.simplex.basis[row]!] === null && this.isForbidding(row),
    );
  }

  /** The patterns in use, with how often. */
  uses(): { readonly column: number; readonly pattern: SolverPattern; readonly times: number }[] {
    const amounts = this.simplex.trueAmounts();
    const found: { column: number; pattern: SolverPattern; times: number }[] = [];
    amounts.forEach((times, row) => {
      const column = this.simplex.basis[row]!;
      const pattern = this.patterns[column];
      if (pattern === null || pattern === undefined || times <= 1e-7) return;
      found.push({ column, pattern: this.inFull(pattern), times });
    });
    return found;
  }

  /** Takes what is left to be cut, and the stock left, from now on; mends the basis for it. */
  leave(demand: readonly number[], limits: ReadonlyMap<number, number>): void {
    this.demand = demand;
    this.limits = limits;
    this.simplex.setRight(this.right());
    const isMended = this.simplex.dual();
    this.bar();
    if (isMended) this.simplex.reprice();
    else this.simplex.restart(this.firstBasis);
  }

  /** Goes back to what was left at a basis that was the least for it then. */
  returnTo(demand: readonly number[], limits: ReadonlyMap<number, number>, basis: ArrayLike<number>): void {
    this.demand = demand;
    this.limits = limits;
    this.bar();
    this.simplex.setRight(this.right());
    this.simplex.restart(basis);
    this.simplex.primal();
  }

  /** Patterns of more than is left are no longer made. */
  private bar(): void {
    this.patterns.forEach((pattern, column) => {
      if (pattern === null) return;
      const isProper =
        pattern.items.every((item, k) => pattern.counts[k]! <= this.demand[item]!) &&
        this.limits.get(pattern.stock)! > 0;
      this.simplex.setCost(column, isProper ? pattern.cost / this.scale : FORBIDDING, !isProper);
    });
    this.work.done += this.patterns.length * 4;
  }

  /** A whole plan's bars as patterns to choose among. */
  offer(uses: readonly SolverUse[]): void {
    for (const { pattern } of uses) this.keep(pattern.stock, pattern.counts);
  }

  private right(): number[] {
    return [...this.demand, ...this.limited.map((bar) => this.limits.get(bar.index)!)];
  }

  private plain(row: number, value: number, cost: number): number {
    this.patterns.push(null);
    return this.simplex.add([row], [value], cost);
  }

  private isForbidding(row: number): boolean {
    return this.simplex.basis[row]! < this.problem.lengths.length;
  }

  private inFull(pattern: PoolPattern): SolverPattern {
    const counts = new Array<number>(this.problem.lengths.length).fill(0);
    pattern.items.forEach((item, k) => {
      counts[item] = pattern.counts[k]!;
    });
    return { stock: pattern.stock, counts };
  }

  /** Patterns worth more than they cost at the prices in force, and the bound that these prices prove. */
  private generate(): number {
    const { problem, simplex, pricing } = this;
    const { prices } = simplex;
    const items = problem.lengths.length;
    const values = Array.from({ length: items }, (_, item) => Math.max(0, prices[item]! * this.scale));
    const costs = problem.stock.map((bar) => {
      if (this.limits.get(bar.index)! <= 0) return Number.POSITIVE_INFINITY;
      const row = this.limitRow.get(bar.index);
      return bar.cost - (row === undefined ? 0 : Math.min(0, prices[row]! * this.scale));
    });
    const left = this.demand.slice();
    let added = 0;
    for (let round = 0; round < AT_ONCE; round += 1) {
      const offers = pricing.offers(values, left, costs, round === 0);
      if (round === 0) this.bound = Math.max(this.bound, this.provenBy(values));
      if (offers.length === 0) break;
      for (const { stock, filling } of offers) added += this.keep(stock.index, filling.counts) ? 1 : 0;
      const { counts } = offers[0]!.filling;
      let isSpent = true;
      counts.forEach((count, item) => {
        if (count === 0) return;
        left[item] = 0;
        isSpent = false;
      });
      if (isSpent || left.every((count) => count === 0)) break;
    }
    return added;
  }

  /**
   * A bound from any prices: they are scaled until no bar that there is without limit is worth more than it
   * costs; a limited bar that still is takes what it is worth too much off, once for each.
   */
  private provenBy(values: readonly number[]): number {
    const { stock } = this.problem;
    let scale = 1;
    stock.forEach((bar, at) => {
      if (!Number.isFinite(bar.limit))
        scale = Math.max(scale, this.pricing.worth[at]! / Math.max(bar.cost, 1e-12));
    });
    let total = 0;
    for (let item = 0; item < values.length; item += 1) total += (values[item]! / scale) * this.demand[item]!;
    stock.forEach((bar, at) => {
      const limit = this.limits.get(bar.index)!;
      if (Number.isFinite(bar.limit))
        total -= limit * Math.max(0, this.pricing.worth[at]! / scale - bar.cost);
    });
    return total * (1 - 1e-10);
  }

  private keep(stock: number, counts: readonly number[]): boolean {
    const rows: number[] = [];
    const values: number[] = [];
    counts.forEach((count, item) => {
      if (count === 0) return;
      rows.push(item);
      values.push(count);
    });
    if (rows.length === 0) return false;
    const name = `${stock}:${rows.join(",")}:${values.join(",")}`;
    if (this.known.has(name)) return false;
    this.known.add(name);
    const { cost } = this.problem.stock.find((bar) => bar.index === stock)!;
    this.patterns.push({ stock, items: rows.slice(), counts: values.slice(), cost });
    const row = this.limitRow.get(stock);
    if (row !== undefined) {
      rows.push(row);
      values.push(1);
    }
    this.simplex.add(rows, values, cost / this.scale);
    return true;
  }
}
