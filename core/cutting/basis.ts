/** A column of the master problem: sparse, with its cost. */
export interface Column {
  readonly rows: readonly number[];
  readonly values: readonly number[];
  readonly cost: number;
}

const PIVOT_TOLERANCE = 1e-9;
const REFACTOR_AFTER = 150;

/** The basis of a revised simplex: columns, an explicit inverse, and what both give. */
export class Basis {
  readonly size: number;
  readonly columns: Column[];
  amounts: Float64Array;
  private inverse: Float64Array;
  private sinceRefactor = 0;

  constructor(
    columns: readonly Column[],
    private readonly right: readonly number[],
  ) {
    this.size = right.length;
    this.columns = columns.slice();
    this.inverse = new Float64Array(this.size * this.size);
    this.amounts = new Float64Array(this.size);
    this.refactor();
  }

  /** The price of each row. */
  duals(): Float64Array {
    const prices = new Float64Array(this.size);
    for (let i = 0; i < this.size; i += 1) {
      const cost = this.columns[i]!.cost;
      if (cost === 0) continue;
      for (let j = 0; j < this.size; j += 1) prices[j]! += cost * this.inverse[i * this.size + j]!;
    }
    return prices;
  }

  objective(): number {
    return this.columns.reduce((sum, column, i) => sum + column.cost * this.amounts[i]!, 0);
  }

  /** Brings a column in; false where nothing limits it, or the pivot is too small to be trusted. */
  enter(column: Column): boolean {
    const { size, inverse, amounts } = this;
    const direction = new Float64Array(size);
    for (let i = 0; i < size; i += 1) {
      let sum = 0;
      column.rows.forEach((row, k) => {
        sum += inverse[i * size + row]! * column.values[k]!;
      });
      direction[i] = sum;
    }
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < size; i += 1) {
      if (direction[i]! <= PIVOT_TOLERANCE) continue;
      const ratio = Math.max(0, amounts[i]!) / direction[i]!;
      const isLess = ratio < least - 1e-12;
      if (isLess || (ratio <= least + 1e-12 && leaving >= 0 && direction[i]! > direction[leaving]!)) {
        least = Math.min(least, ratio);
        leaving = i;
      }
    }
    if (leaving < 0) return false;
    this.pivot(leaving, direction, column);
    return true;
  }

  private pivot(leaving: number, direction: Float64Array, column: Column): void {
    const { size, inverse, amounts } = this;
    const pivot = direction[leaving]!;
    const step = Math.max(0, amounts[leaving]!) / pivot;
    for (let j = 0; j < size; j += 1) inverse[leaving * size + j]! /= pivot;
    for (let i = 0; i < size; i += 1) {
      const factor = direction[i]!;
      if (i === leaving || factor === 0) continue;
      amounts[i]! -= factor * step;
      for (let j = 0; j < size; j += 1) inverse[i * size + j]! -= factor * inverse[leaving * size + j]!;
    }
    amounts[leaving] = step;
    this.columns[leaving] = column;
    this.sinceRefactor += 1;
    if (this.sinceRefactor >= REFACTOR_AFTER) this.refactor();
  }

  /** Inverts the basis afresh, so that rounding does not pile up. */
  private refactor(): void {
    const { size } = this;
    const left = new Float64Array(size * size);
    this.columns.forEach((column, j) => {
      column.rows.forEach((row, k) => {
        left[row * size + j] = column.values[k]!;
      });
    });
    const inverse = new Float64Array(size * size);
    for (let i = 0; i < size; i += 1) inverse[i * size + i] = 1;
    for (let j = 0; j < size; j += 1) {
      let best = j;
      for (let i = j + 1; i < size; i += 1) {
        if (Math.abs(left[i * size + j]!) > Math.abs(left[best * size + j]!)) best = i;
      }
      swapRows(left, size, j, best);
      swapRows(inverse, size, j, best);
      const pivot = left[j * size + j]!;
      for (let k = 0; k < size; k += 1) {
        left[j * size + k]! /= pivot;
        inverse[j * size + k]! /= pivot;
      }
      for (let i = 0; i < size; i += 1) {
        const factor = left[i * size + j]!;
        if (i === j || factor === 0) continue;
        for (let k = 0; k < size; k += 1) {
          left[i * size + k]! -= factor * left[j * size + k]!;
          inverse[i * size + k]! -= factor * inverse[j * size + k]!;
        }
      }
    }
    this.inverse = inverse;
    for (let i = 0; i < size; i += 1) {
      let sum = 0;
      for (let j = 0; j < size; j += 1) sum += inverse[i * size + j]! * this.right[j]!;
      this.amounts[i] = sum;
    }
    this.sinceRefactor = 0;
  }
}

function swapRows(matrix: Float64Array, size: number, a: number, b: number): void {
  if (a === b) return;
  for (let k = 0; k < size; k += 1) {
    const kept = matrix[a * size + k]!;
    matrix[a * size + k] = matrix[b * size + k]!;
    matrix[b * size + k] = kept;
  }
}
