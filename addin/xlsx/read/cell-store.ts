import type { Cell, CellError } from "../../../core/schedule/sheet";
import { UnreadableWorkbook } from "../unreadable-workbook";

enum Kind {
  Blank = 0,
  Number = 1,
  Text = 2,
  True = 3,
  False = 4,
  Error = 5,
}

/**
 * The cells of one sheet in flat arrays, row after row: about 16 bytes a cell instead of an object each.
 * Cells arrive in rising order of rows; within a row they are put in order.
 */
export class CellStore {
  private columns = new Uint16Array(1024);
  private kinds = new Uint8Array(1024);
  private styles = new Uint32Array(1024);
  private numbers = new Float64Array(1024);
  private count = 0;
  private readonly rows: number[] = [];
  private readonly starts: number[] = [];
  private readonly texts: string[] = [];
  private readonly pooled = new Map<string, number>();
  private readonly errors: CellError[] = [];
  private unordered = false;

  startRow(row: number): void {
    const last = this.rows[this.rows.length - 1];
    if (last !== undefined && row <= last) {
      throw new UnreadableWorkbook(
        `row ${row + 1} of a sheet stands after row ${last + 1}: the file is damaged`,
      );
    }
    this.rows.push(row);
    this.starts.push(this.count);
    this.unordered = false;
  }

  endRow(): void {
    if (this.unordered) this.orderLastRow();
  }

  /** Keeps one cell; gives its index. */
  add(column: number, style: number, cell: Cell): number {
    if (this.count === this.columns.length) this.grow();
    const at = this.count;
    const first = this.starts[this.starts.length - 1]!;
    if (at > first && this.columns[at - 1]! >= column) this.unordered = true;
    this.columns[at] = column;
    this.styles[at] = style;
    this.put(at, cell);
    this.count += 1;
    return at;
  }

  get rowNumbers(): readonly number[] {
    return this.rows;
  }

  hasRow(row: number): boolean {
    return this.rowIndex(row) >= 0;
  }

  /** Index of the cell at a place; -1 where there is none. */
  find(row: number, column: number): number {
    const place = this.rowIndex(row);
    if (place < 0) return -1;
    const start = this.starts[place]!;
    const end = this.starts[place + 1] ?? this.count;
    if (start === end) return -1;
    const { columns } = this;
    const guess = start + column - columns[start]!;
    if (guess >= start && guess < end && columns[guess] === column) return guess;
    let low = start;
    let high = end - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const found = columns[middle]!;
      if (found === column) return middle;
      if (found < column) low = middle + 1;
      else high = middle - 1;
    }
    return -1;
  }

  cell(index: number): Cell {
    switch (this.kinds[index]) {
      case Kind.Number:
        return this.numbers[index]!;
      case Kind.Text:
        return this.texts[this.numbers[index]!]!;
      case Kind.True:
        return true;
      case Kind.False:
        return false;
      case Kind.Error:
        return this.errors[this.numbers[index]!]!;
      default:
        return null;
    }
  }

  isBlank(index: number): boolean {
    return this.kinds[index] === Kind.Blank;
  }

  style(index: number): number {
    return this.styles[index]!;
  }

  /** First and last row and column that hold a value; null for an empty sheet. */
  bounds(): { top: number; left: number; bottom: number; right: number } | null {
    let top = -1;
    let bottom = -1;
    let left = Number.POSITIVE_INFINITY;
    let right = -1;
    this.rows.forEach((row, place) => {
      const end = this.starts[place + 1] ?? this.count;
      for (let at = this.starts[place]!; at < end; at += 1) {
        if (this.kinds[at] === Kind.Blank) continue;
        const column = this.columns[at]!;
        if (top < 0) top = row;
        bottom = row;
        if (column < left) left = column;
        if (column > right) right = column;
      }
    });
    return top < 0 ? null : { top, left, bottom, right };
  }

  /** Every kept cell of a row, blank ones too, in column order. */
  *cellsOfRow(row: number): Generator<{ column: number; index: number }> {
    const place = this.rowIndex(row);
    if (place < 0) return;
    const end = this.starts[place + 1] ?? this.count;
    for (let index = this.starts[place]!; index < end; index += 1)
      yield { column: this.columns[index]!, index };
  }

  private rowIndex(row: number): number {
    const { rows } = this;
    const first = rows[0];
    if (first === undefined || row < first) return -1;
    const guess = row - first;
    if (rows[guess] === row) return guess;
    let low = 0;
    let high = Math.min(guess, rows.length - 1);
    while (low <= high) {
      const middle = (low + high) >> 1;
      const found = rows[middle]!;
      if (found === row) return middle;
      if (found < row) low = middle + 1;
      else high = middle - 1;
    }
    return -1;
  }

  private put(at: number, cell: Cell): void {
    if (cell === null) this.kinds[at] = Kind.Blank;
    else if (typeof cell === "number") {
      this.kinds[at] = Kind.Number;
      this.numbers[at] = cell;
    } else if (typeof cell === "string") {
      this.kinds[at] = Kind.Text;
      this.numbers[at] = this.pool(cell);
    } else if (typeof cell === "boolean") this.kinds[at] = cell ? Kind.True : Kind.False;
    else {
      this.kinds[at] = Kind.Error;
      this.numbers[at] = this.errors.push(cell) - 1;
    }
  }

  private pool(text: string): number {
    const known = this.pooled.get(text);
    if (known !== undefined) return known;
    const index = this.texts.push(text) - 1;
    this.pooled.set(text, index);
    return index;
  }

  private orderLastRow(): void {
    const start = this.starts[this.starts.length - 1]!;
    const order = Array.from({ length: this.count - start }, (_, index) => start + index);
    order.sort((a, b) => this.columns[a]! - this.columns[b]!);
    const copies = order.map(
      (at) => [this.columns[at]!, this.kinds[at]!, this.styles[at]!, this.numbers[at]!] as const,
    );
    copies.forEach(([column, kind, style, number], index) => {
      this.columns[start + index] = column;
      this.kinds[start + index] = kind;
      this.styles[start + index] = style;
      this.numbers[start + index] = number;
    });
  }

  private grow(): void {
    const size = this.count * 2;
    const grown = <T extends Uint8Array | Uint16Array | Uint32Array | Float64Array>(from: T, to: T): T => {
      to.set(from);
      return to;
    };
    this.columns = grown(this.columns, new Uint16Array(size));
    this.kinds = grown(this.kinds, new Uint8Array(size));
    this.styles = grown(this.styles, new Uint32Array(size));
    this.numbers = grown(this.numbers, new Float64Array(size));
  }
}
