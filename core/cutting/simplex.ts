import { EtaFile } from "./eta-file";
import type { Work } from "./work";

const PIVOT_TOLERANCE = 1e-8;
const REDUCED_COST = 1e-9;
const NEGATIVE = -1e-9;
/** the right sides are moved apart by about this much, so that equal ratios do not stall the search */
const SPREAD = 1e-6;
const REFACTOR_AFTER = 80;
/** columns looked at before one of them enters */
const LEAST_BLOCK = 400;

/**
 * A linear program, least cost of x >= 0 with A x = right, over a pool of columns that grows: a revised
 * simplex, for costs of about 1. `primal` lowers the cost; `dual` mends amounts that a changed right side has made negative.
 * Right sides are spread by a hair while pivoting; `trueAmounts` is without it.
 */
export class Simplex {
  readonly size: number;
  /** pool place of the column of each row of the basis */
  readonly basis: Int32Array;
  readonly prices: Float64Array;
  private readonly right: Float64Array;
  private readonly spread: Float64Array;
  private readonly amounts: Float64Array;
  private readonly direction: Float64Array;
  private readonly row: Float64Array;
  private readonly inverse: EtaFile;
  private count = 0;
  private starts = new Int32Array(256);
  private rows = new Int32Array(1024);
  private values = new Float64Array(1024);
  private costs = new Float64Array(256);
  /** 1 over the length of each column as a vector: reduced costs are compared by slope */
  private steepness = new Float64Array(256);
  private inBasis = new Uint8Array(256);
  private barred = new Uint8Array(256);
  private sinceRefactor = 0;
  /** column from which the next entering one is looked for */
  private from = 0;

  constructor(
    right: ArrayLike<number>,
    private readonly work: Work,
  ) {
    this.size = right.length;
    this.right = Float64Array.from(right);
    this.spread = Float64Array.from(right, (_, row) => SPREAD * (1 + ((row * 7919) % 1009) / 1009));
    this.basis = new Int32Array(this.size).fill(-1);
    this.prices = new Float64Array(this.size);
    this.amounts = new Float64Array(this.size);
    this.direction = new Float64Array(this.size);
    this.row = new Float64Array(this.size);
    this.inverse = new EtaFile(work);
  }

  get columns(): number {
    return this.count;
  }

  /** Adds a column to the pool; gives its place. */
  add(rows: readonly number[], values: readonly number[], cost: number): number {
    const { count } = this;
    const start = this.starts[count]!;
    const end = start + rows.length;
    if (count + 2 > this.starts.length) this.growColumns();
    if (end > this.rows.length) this.growEntries(end);
    this.rows.set(rows, start);
    this.values.set(values, start);
    this.starts[count + 1] = end;
    this.costs[count] = cost;
    this.steepness[count] = 1 / Math.sqrt(1 + values.reduce((sum, value) => sum + value * value, 0));
    this.count += 1;
    return count;
  }

  /** Starts anew from these columns. */
  restart(basis: ArrayLike<number>): void {
    this.inBasis.fill(0);
    for (let i = 0; i < this.size; i += 1) {
      this.basis[i] = basis[i]!;
      this.inBasis[basis[i]!] = 1;
    }
    this.refactor();
  }

  setRight(right: ArrayLike<number>): void {
    this.right.set(right);
    this.computeAmounts(this.amounts, true);
  }

  /** A barred column never enters. Prices are those of before until `reprice`. */
  setCost(column: number, cost: number, isBarred: boolean): void {
    this.costs[column] = cost;
    this.barred[column] = isBarred ? 1 : 0;
  }

  reprice(): void {
    for (let i = 0; i < this.size; i += 1) this.prices[i] = this.costs[this.basis[i]!]!;
    this.inverse.backward(this.prices);
  }

  cost(): number {
    let sum = 0;
    for (let row = 0; row < this.size; row += 1) sum += this.prices[row]! * this.right[row]!;
    return sum;
  }

  /** Amounts of the basis, row by row, without the spread. */
  trueAmounts(): Float64Array {
    const amounts = new Float64Array(this.size);
    this.computeAmounts(amounts, false);
    return amounts;
  }

  /** Lowers the cost as far as the pool allows; false where the work ran out. */
  primal(): boolean {
    while (this.work.allows()) {
      const entering = this.primalEntering();
      if (entering < 0 || !this.enter(entering)) return true;
    }
    return false;
  }

  /** The steepest of a block of columns, the next block where none of it lowers the cost; -1 where none does. */
  private primalEntering(): number {
    const { count, starts, rows, values, costs, steepness, inBasis, barred, prices } = this;
    const block = Math.max(LEAST_BLOCK, count >> 3);
    let column = this.from < count ? this.from : 0;
    let entering = -1;
    let least = 0;
    let seen = 0;
    while (seen < count) {
      const stop = Math.min(count, column + Math.min(block, count - seen));
      seen += stop - column;
      this.work.done += starts[stop]! - starts[column]! + stop - column;
      for (; column < stop; column += 1) {
        if (inBasis[column] !== 0 || barred[column] !== 0) continue;
        let reduced = costs[column]!;
        const end = starts[column + 1]!;
        for (let k = starts[column]!; k < end; k += 1) reduced -= prices[rows[k]!]! * values[k]!;
        if (reduced >= -REDUCED_COST) continue;
        const slope = reduced * steepness[column]!;
        if (slope >= least) continue;
        least = slope;
        entering = column;
      }
      if (column === count) column = 0;
      if (entering >= 0) break;
    }
    this.from = column;
    return entering;
  }

  /** Makes all amounts positive again without letting any reduced cost fall below 0; false where it cannot. */
  dual(): boolean {
    for (let pivots = 0; pivots < this.size * 4 && this.work.allows(); pivots += 1) {
      let leaving = -1;
      let least = NEGATIVE;
      for (let i = 0; i < this.size; i += 1) {
        if (this.amounts[i]! >= least) continue;
        least = this.amounts[i]!;
        leaving = i;
      }
      if (leaving < 0) return true;
      const entering = this.dualEntering(leaving);
      if (entering < 0) return false;
      this.directionOf(entering);
      this.pivot(leaving, entering);
    }
    return false;
  }

  /** The column that may take this row's place with the least rise of cost; -1 where none can. */
  private dualEntering(leaving: number): number {
    const { row, count, starts, rows, values, inBasis, barred } = this;
    row.fill(0);
    row[leaving] = 1;
    this.inverse.backward(row);
    let entering = -1;
    let best = Number.POSITIVE_INFINITY;
    let bestAlpha = 0;
    for (let column = 0; column < count; column += 1) {
      if (inBasis[column] !== 0 || barred[column] !== 0) continue;
      let alpha = 0;
      const end = starts[column + 1]!;
      for (let k = starts[column]!; k < end; k += 1) alpha += row[rows[k]!]! * values[k]!;
      if (alpha >= -1e-7) continue;
      const ratio = Math.max(0, this.reduced(column)) / -alpha;
      if (ratio > best + 1e-12 || (ratio >= best - 1e-12 && alpha >= bestAlpha)) continue;
      best = Math.min(best, ratio);
      bestAlpha = alpha;
      entering = column;
    }
    this.work.done += (starts[count]! + count) * 2;
    return entering;
  }

  private growColumns(): void {
    this.starts = grown(this.starts, new Int32Array(this.starts.length * 2));
    this.costs = grown(this.costs, new Float64Array(this.costs.length * 2));
    this.steepness = grown(this.steepness, new Float64Array(this.steepness.length * 2));
    this.inBasis = grown(this.inBasis, new Uint8Array(this.inBasis.length * 2));
    this.barred = grown(this.barred, new Uint8Array(this.barred.length * 2));
  }

  private growEntries(least: number): void {
    const size = Math.max(least, this.rows.length * 2);
    this.rows = grown(this.rows, new Int32Array(size));
    this.values = grown(this.values, new Float64Array(size));
  }

  private reduced(column: number): number {
    let reduced = this.costs[column]!;
    const end = this.starts[column + 1]!;
    for (let k = this.starts[column]!; k < end; k += 1)
      reduced -= this.prices[this.rows[k]!]! * this.values[k]!;
    return reduced;
  }

  private directionOf(column: number): void {
    const { direction } = this;
    direction.fill(0);
    for (let k = this.starts[column]!; k < this.starts[column + 1]!; k += 1)
      direction[this.rows[k]!] = this.values[k]!;
    this.inverse.forward(direction);
  }

  /** Brings a column in; false where nothing limits it. */
  private enter(column: number): boolean {
    const { size, amounts, direction } = this;
    this.directionOf(column);
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < size; i += 1) {
      if (direction[i]! <= PIVOT_TOLERANCE) continue;
      const ratio = Math.max(0, amounts[i]!) / direction[i]!;
      if (ratio < least - 1e-12 || (ratio <= least + 1e-12 && direction[i]! > direction[leaving]!)) {
        least = Math.min(least, ratio);
        leaving = i;
      }
    }
    if (leaving < 0) return false;
    this.pivot(leaving, column);
    return true;
  }

  private pivot(leaving: number, entering: number): void {
    const { size, amounts, direction } = this;
    const step = amounts[leaving]! / direction[leaving]!;
    for (let i = 0; i < size; i += 1) if (i !== leaving) amounts[i]! -= direction[i]! * step;
    amounts[leaving] = step;
    this.inBasis[this.basis[leaving]!] = 0;
    this.inBasis[entering] = 1;
    this.basis[leaving] = entering;
    this.inverse.push(leaving, direction);
    this.sinceRefactor += 1;
    if (this.sinceRefactor >= REFACTOR_AFTER) this.refactor();
    else this.reprice();
  }

  private computeAmounts(into: Float64Array, withSpread: boolean): void {
    for (let i = 0; i < this.size; i += 1) into[i] = this.right[i]! + (withSpread ? this.spread[i]! : 0);
    this.inverse.forward(into);
  }

  /** Inverts the basis afresh, shortest columns first, so that rounding and length do not pile up. */
  private refactor(): void {
    const { size, inverse, direction } = this;
    inverse.clear();
    const length = (column: number): number => this.starts[column + 1]! - this.starts[column]!;
    const columns = Array.from(this.basis).sort((a, b) => length(a) - length(b) || a - b);
    const isTaken = new Uint8Array(size);
    for (const column of columns) {
      this.directionOf(column);
      let row = -1;
      for (let i = 0; i < size; i += 1)
        if (isTaken[i] === 0 && (row < 0 || Math.abs(direction[i]!) > Math.abs(direction[row]!))) row = i;
      isTaken[row] = 1;
      this.basis[row] = column;
      inverse.push(row, direction);
    }
    this.work.done += size * size;
    this.computeAmounts(this.amounts, true);
    this.reprice();
    this.sinceRefactor = 0;
  }
}

function grown<List extends Int32Array | Float64Array | Uint8Array>(old: List, larger: List): List {
  larger.set(old);
  return larger;
}
