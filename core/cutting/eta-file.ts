import type { Work } from "./work";

/**
 * The inverse of a basis as a product of elementary matrices, each one column that took the place of a row:
 * the product form of Dantzig and Orchard-Hays (Mathematical Tables and Other Aids to Computation 8, 1954).
 * Cutting patterns hold few lengths, so the columns stay short.
 */
export class EtaFile {
  length = 0;
  private readonly pivotRows: number[] = [];
  private readonly pivots: number[] = [];
  private starts: number[] = [0];
  private rows: number[] = [];
  private values: number[] = [];

  constructor(private readonly work: Work) {}

  clear(): void {
    this.length = 0;
    this.pivotRows.length = 0;
    this.pivots.length = 0;
    this.starts = [0];
    this.rows = [];
    this.values = [];
  }

  /** A column, already seen through the matrices before it, takes the place of this row. */
  push(row: number, column: Float64Array): void {
    for (let i = 0; i < column.length; i += 1) {
      const value = column[i]!;
      if (i === row || Math.abs(value) < 1e-12) continue;
      this.rows.push(i);
      this.values.push(value);
    }
    this.pivotRows.push(row);
    this.pivots.push(column[row]!);
    this.starts.push(this.rows.length);
    this.length += 1;
    this.work.done += column.length;
  }

  /** inverse x vector, in place */
  forward(vector: Float64Array): void {
    const { rows, values, starts, pivotRows, pivots } = this;
    let steps = this.length;
    for (let eta = 0; eta < this.length; eta += 1) {
      const row = pivotRows[eta]!;
      const at = vector[row]!;
      if (at === 0) continue;
      const share = at / pivots[eta]!;
      vector[row] = share;
      const end = starts[eta + 1]!;
      for (let k = starts[eta]!; k < end; k += 1) vector[rows[k]!]! -= values[k]! * share;
      steps += end - starts[eta]!;
    }
    this.work.done += steps;
  }

  /** vector x inverse, in place */
  backward(vector: Float64Array): void {
    const { rows, values, starts, pivotRows, pivots } = this;
    for (let eta = this.length - 1; eta >= 0; eta -= 1) {
      const row = pivotRows[eta]!;
      let sum = vector[row]!;
      const end = starts[eta + 1]!;
      for (let k = starts[eta]!; k < end; k += 1) sum -= vector[rows[k]!]! * values[k]!;
      vector[row] = sum / pivots[eta]!;
    }
    this.work.done += this.length + this.rows.length;
  }
}
