import type { Work } from "./work";

/**
 * The inverse of a basis as a product of elementary matrices, each one column that took the place of a row:
 * the product form of Dantzig and Orchard-Hays (Mathematical Tables and Other Aids to Computation 8, 1954).
 * Cutting patterns hold few lengths, so the columns stay short.
 */
export class EtaFile {
  length = 0;
  private pivotRows = new Int32Array(256);
  private pivots = new Float64Array(256);
  private starts = new Int32Array(257);
  private rows = new Int32Array(4096);
  private values = new Float64Array(4096);

  constructor(private readonly work: Work) {}

  clear(): void {
    this.length = 0;
  }

  /** A column, already seen through the matrices before it, takes the place of this row. */
  push(row: number, column: Float64Array): void {
    let end = this.starts[this.length]!;
    this.makeRoom(end + column.length);
    const { rows, values } = this;
    for (let i = 0; i < column.length; i += 1) {
      const value = column[i]!;
      if (i === row || Math.abs(value) < 1e-12) continue;
      rows[end] = i;
      values[end] = value;
      end += 1;
    }
    this.pivotRows[this.length] = row;
    this.pivots[this.length] = column[row]!;
    this.length += 1;
    this.starts[this.length] = end;
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
    this.work.done += this.length + starts[this.length]!;
  }

  private makeRoom(entries: number): void {
    if (this.length + 2 > this.starts.length) {
      const size = this.starts.length * 2;
      this.pivotRows = grown(this.pivotRows, new Int32Array(size));
      this.pivots = grown(this.pivots, new Float64Array(size));
      this.starts = grown(this.starts, new Int32Array(size + 1));
    }
    if (entries <= this.rows.length) return;
    const size = Math.max(entries, this.rows.length * 2);
    this.rows = grown(this.rows, new Int32Array(size));
    this.values = grown(this.values, new Float64Array(size));
  }
}

function grown<List extends Int32Array | Float64Array>(old: List, larger: List): List {
  larger.set(old);
  return larger;
}
