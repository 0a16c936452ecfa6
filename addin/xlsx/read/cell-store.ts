import type { Cell, CellError } from "../../../core/schedule/sheet";
import { memoryOfThreads } from "../../../core/units/memory-of-threads";
import { UnreadableWorkbook } from "../unreadable-workbook";

enum Kind {
  Blank = 0,
  Number = 1,
  Text = 2,
  True = 3,
  False = 4,
  Error = 5,
  /** a number without a fraction, of 32 bits */
  Whole = 6,
}

/** A run of cells: what each is by its place in the run. All in one block, which goes back whole when it is let go. */
class Segment {
  block!: ArrayBufferLike;
  columns!: Uint16Array;
  kinds!: Uint8Array;
  /** a workbook has at most 65,490 styles (ECMA-376-1:2016, 18.8.10, from memory) */
  styles!: Uint16Array;
  /** the whole number itself; of a text, an error or a number with a fraction its place among those */
  values!: Int32Array;

  constructor(block: ArrayBufferLike) {
    this.#lay(block);
  }

  static ofSize(size: number): Segment {
    return new Segment(memoryOfThreads(size * BYTES_A_CELL));
  }

  get room(): number {
    return this.values.length;
  }

  grow(size: number): void {
    const { columns, kinds, styles, values } = this;
    this.#lay(memoryOfThreads(size * BYTES_A_CELL));
    this.columns.set(columns);
    this.kinds.set(kinds);
    this.styles.set(styles);
    this.values.set(values);
  }

  #lay(block: ArrayBufferLike): void {
    const size = block.byteLength / BYTES_A_CELL;
    this.block = block;
    this.values = new Int32Array(block as ArrayBuffer, 0, size);
    this.columns = new Uint16Array(block as ArrayBuffer, size * 4, size);
    this.styles = new Uint16Array(block as ArrayBuffer, size * 6, size);
    this.kinds = new Uint8Array(block as ArrayBuffer, size * 8, size);
  }
}

const BYTES_A_CELL = 9;

/** A list while cells arrive, then memory that threads share. */
type Numbers = number[] | Int32Array;

/** A store's cells as plain data that another thread can be given; their numbers stand in memory of both. */
export interface PackedCells {
  readonly blocks: readonly ArrayBufferLike[];
  readonly fractions: Float64Array[];
  readonly rows: Numbers;
  readonly starts: Numbers;
  readonly texts: string[];
  readonly errors: CellError[];
  readonly count: number;
}

/** so many that a block is large enough to be given back to the machine */
const SEGMENT_BITS = 17;
const SEGMENT_SIZE = 1 << SEGMENT_BITS;
/** cells that the first run begins with: most sheets are small */
const FEWEST = 1024;
const GROWTH = 4;
const WITHIN = SEGMENT_SIZE - 1;
const LAST_STYLE = 0xffff;

/**
 * The cells of one sheet in flat arrays, row after row: 9 bytes a cell instead of an object each (17 with a
 * fraction), and hardly ever moved as more arrive. Cells arrive in rising order of rows; within a row they are put in order.
 */
export class CellStore {
  private segments: Segment[] = [];
  private isGone = false;
  private count = 0;
  private readonly pooled = new Map<string, number>();
  private fractions: Float64Array[] = [];
  private fractionCount = 0;
  private unordered = false;

  constructor(
    private rows: Numbers = [],
    private starts: Numbers = [],
    private readonly texts: string[] = [],
    private readonly errors: CellError[] = [],
  ) {}

  startRow(row: number): void {
    const last = this.rows[this.rows.length - 1];
    if (last !== undefined && row <= last) {
      throw new UnreadableWorkbook(
        `row ${row + 1} of a sheet stands after row ${last + 1}: the file is damaged`,
      );
    }
    (this.rows as number[]).push(row);
    (this.starts as number[]).push(this.count);
    this.unordered = false;
  }

  /** Takes the last row back as if it had not been begun. */
  dropRow(): void {
    (this.rows as number[]).pop();
    this.count = (this.starts as number[]).pop() as number;
  }

  /** No more cells arrive: what only their arrival needs is let go, and threads may share the rest. */
  close(): void {
    this.pooled.clear();
    this.rows = ofThreads(this.rows);
    this.starts = ofThreads(this.starts);
  }

  packed(): PackedCells {
    const { fractions, rows, starts, texts, errors, count } = this;
    return { blocks: this.segments.map(({ block }) => block), fractions, rows, starts, texts, errors, count };
  }

  /** The store whose cells were packed: none is added to it. */
  static of({ blocks, fractions, rows, starts, texts, errors, count }: PackedCells): CellStore {
    const store = new CellStore(rows, starts, texts, errors);
    store.segments = blocks.map((block) => new Segment(block));
    store.fractions = fractions;
    store.count = count;
    return store;
  }

  /** Gives the cells' memory back; what asks for a cell afterwards is at fault, and is told so. */
  letGo(): void {
    this.isGone = true;
    this.segments = [];
    this.fractions = [];
  }

  endRow(): void {
    if (this.unordered) this.orderLastRow();
  }

  /** Keeps one cell; gives its index. */
  add(column: number, style: number, cell: Cell): number {
    const at = this.count;
    const place = at & WITHIN;
    if (place === 0 && this.segments.length === at >> SEGMENT_BITS)
      this.segments.push(Segment.ofSize(at === 0 ? FEWEST : SEGMENT_SIZE));
    const first = this.starts[this.starts.length - 1]!;
    if (at > first && this.column(at - 1) >= column) this.unordered = true;
    const segment = this.segments[at >> SEGMENT_BITS]!;
    if (place === segment.room) segment.grow(Math.min(SEGMENT_SIZE, place * GROWTH));
    segment.columns[place] = column;
    segment.styles[place] = style > LAST_STYLE ? 0 : style;
    this.put(segment, place, cell);
    this.count += 1;
    return at;
  }

  /** Keeps one cell with a text whose place is known. */
  addText(column: number, style: number, place: number): number {
    const at = this.add(column, style, null);
    const segment = this.segments[at >> SEGMENT_BITS]!;
    segment.kinds[at & WITHIN] = Kind.Text;
    segment.values[at & WITHIN] = place;
    return at;
  }

  /** Where a text is kept, once however many cells hold it. */
  placeOfText(text: string): number {
    const known = this.pooled.get(text);
    if (known !== undefined) return known;
    const index = this.texts.push(text) - 1;
    this.pooled.set(text, index);
    return index;
  }

  get rowNumbers(): Iterable<number> {
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
    const guess = start + column - this.column(start);
    if (guess >= start && guess < end && this.column(guess) === column) return guess;
    let low = start;
    let high = end - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const found = this.column(middle);
      if (found === column) return middle;
      if (found < column) low = middle + 1;
      else high = middle - 1;
    }
    return -1;
  }

  cell(index: number): Cell {
    const segment = this.segments[index >> SEGMENT_BITS];
    if (segment === undefined) return null;
    const place = index & WITHIN;
    switch (segment.kinds[place]) {
      case Kind.Whole:
        return segment.values[place]!;
      case Kind.Number:
        return this.fraction(segment.values[place]!);
      case Kind.Text:
        return this.texts[segment.values[place]!]!;
      case Kind.True:
        return true;
      case Kind.False:
        return false;
      case Kind.Error:
        return this.errors[segment.values[place]!]!;
      default:
        return null;
    }
  }

  isBlank(index: number): boolean {
    return this.segments[index >> SEGMENT_BITS]!.kinds[index & WITHIN] === Kind.Blank;
  }

  style(index: number): number {
    return this.segments[index >> SEGMENT_BITS]?.styles[index & WITHIN] ?? 0;
  }

  /** First and last row and column that hold a value; null for an empty sheet. */
  bounds(): { top: number; left: number; bottom: number; right: number } | null {
    let top = -1;
    let bottom = -1;
    let left = Number.POSITIVE_INFINITY;
    let right = -1;
    for (let place = 0; place < this.rows.length; place += 1) {
      const row = this.rows[place]!;
      const end = this.starts[place + 1] ?? this.count;
      for (let at = this.starts[place]!; at < end; at += 1) {
        if (this.isBlank(at)) continue;
        const column = this.column(at);
        if (top < 0) top = row;
        bottom = row;
        if (column < left) left = column;
        if (column > right) right = column;
      }
    }
    return top < 0 ? null : { top, left, bottom, right };
  }

  /** Every kept cell of a row, blank ones too, in column order. */
  *cellsOfRow(row: number): Generator<{ column: number; index: number }> {
    const place = this.rowIndex(row);
    if (place < 0) return;
    const end = this.starts[place + 1] ?? this.count;
    for (let index = this.starts[place]!; index < end; index += 1)
      yield { column: this.column(index), index };
  }

  /** A row's values from the column `left` on, as far as it is filled: one stray cell in the last column makes no row long. */
  valuesOfRow(row: number, left: number): Cell[] {
    const cells: Cell[] = [];
    const place = this.rowIndex(row);
    if (place < 0) return cells;
    const end = this.starts[place + 1] ?? this.count;
    for (let index = this.starts[place]!; index < end; index += 1) {
      const column = this.column(index) - left;
      if (column < 0 || this.isBlank(index)) continue;
      while (cells.length < column) cells.push(null);
      cells.push(this.cell(index));
    }
    return cells;
  }

  private rowIndex(row: number): number {
    if (this.isGone) throw new Error("cells are asked for of a sheet that was let go");
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

  private column(index: number): number {
    return this.segments[index >> SEGMENT_BITS]!.columns[index & WITHIN]!;
  }

  private put({ kinds, values }: Segment, place: number, cell: Cell): void {
    if (cell === null) kinds[place] = Kind.Blank;
    else if (typeof cell === "number") {
      // nought has a sign, which a whole number does not keep
      const isWhole = (cell | 0) === cell && !Object.is(cell, -0);
      kinds[place] = isWhole ? Kind.Whole : Kind.Number;
      values[place] = isWhole ? cell : this.keepFraction(cell);
    } else if (typeof cell === "string") {
      kinds[place] = Kind.Text;
      values[place] = this.placeOfText(cell);
    } else if (typeof cell === "boolean") kinds[place] = cell ? Kind.True : Kind.False;
    else {
      kinds[place] = Kind.Error;
      values[place] = this.errors.push(cell) - 1;
    }
  }

  private keepFraction(value: number): number {
    const at = this.fractionCount;
    this.fractionCount += 1;
    const run = at >> SEGMENT_BITS;
    const place = at & WITHIN;
    if (run === this.fractions.length)
      this.fractions.push(roomForFractions(run === 0 ? FEWEST : SEGMENT_SIZE));
    const before = this.fractions[run]!;
    if (place === before.length) {
      const more = roomForFractions(Math.min(SEGMENT_SIZE, place * GROWTH));
      more.set(before);
      this.fractions[run] = more;
    }
    this.fractions[run]![place] = value;
    return at;
  }

  private fraction(place: number): number {
    return this.fractions[place >> SEGMENT_BITS]![place & WITHIN]!;
  }

  private orderLastRow(): void {
    const start = this.starts[this.starts.length - 1]!;
    const order = Array.from({ length: this.count - start }, (_, index) => start + index);
    order.sort((a, b) => this.column(a) - this.column(b));
    const copies = order.map((index) => {
      const { columns, kinds, styles, values } = this.segments[index >> SEGMENT_BITS]!;
      const at = index & WITHIN;
      return [columns[at]!, kinds[at]!, styles[at]!, values[at]!] as const;
    });
    copies.forEach(([column, kind, style, value], index) => {
      const { columns, kinds, styles, values } = this.segments[(start + index) >> SEGMENT_BITS]!;
      const at = (start + index) & WITHIN;
      columns[at] = column;
      kinds[at] = kind;
      styles[at] = style;
      values[at] = value;
    });
  }
}

function ofThreads(numbers: Numbers): Int32Array {
  const shared = new Int32Array(
    memoryOfThreads(numbers.length * Int32Array.BYTES_PER_ELEMENT) as ArrayBuffer,
  );
  shared.set(numbers);
  return shared;
}

function roomForFractions(count: number): Float64Array {
  return new Float64Array(memoryOfThreads(count * Float64Array.BYTES_PER_ELEMENT) as ArrayBuffer);
}
