import { COLUMN } from "./evidence.data";
import type { CellValue } from "./read-value";

/** Cells of a column as they were counted by kind. */
interface Tally {
  filled: number;
  numbers: number;
  texts: number;
  sizes: number;
  feetInches: number;
  counted: number;
  inchTags: number;
  canadaTags: number;
}

interface Parts {
  /** its place on the sheet; the first one where several act as one */
  readonly column: number;
  /** the columns that act as one: feet beside inches, or columns by size; else its own place alone */
  readonly places: readonly number[];
  /** the columns by size, in order; none for a column of its own */
  readonly bySize: readonly ValueColumn[];
  readonly isFeetBesideInches: boolean;
  /** per row; NaN where there is no number */
  readonly values: Float64Array;
  /** equal values share a number; -1 is blank */
  readonly ids: Int32Array;
  /** equal cells share a number, texts too; -1 is blank */
  readonly labels: Int32Array;
  /** rows in which anything stands */
  readonly isFilled: Uint8Array;
  readonly isRange: Uint8Array;
  /** which of the columns by size a row fills; null for a column of its own */
  readonly which: Int16Array | null;
}

/** One column of a table's rows as numbers: what its values are, before anyone says what they mean. */
export class ValueColumn {
  readonly column: number;
  readonly places: readonly number[];
  readonly bySize: readonly ValueColumn[];
  readonly isFeetBesideInches: boolean;
  readonly values: Float64Array;
  readonly ids: Int32Array;
  readonly labels: Int32Array;
  readonly isFilled: Uint8Array;
  readonly isRange: Uint8Array;
  readonly which: Int16Array | null;
  readonly rowCount: number;
  private known: Statistics | null = null;
  private knownHalf: number | null = null;
  private knownLogs: Float64Array | null = null;

  constructor(
    parts: Parts,
    private readonly tally: Tally,
    private readonly given: { readonly half?: number; readonly wholeShare?: number } = {},
  ) {
    const { column, places, bySize, isFeetBesideInches, values, ids, labels, isFilled, isRange, which } =
      parts;
    this.column = column;
    this.places = places;
    this.bySize = bySize;
    this.isFeetBesideInches = isFeetBesideInches;
    this.values = values;
    this.ids = ids;
    this.labels = labels;
    this.isFilled = isFilled;
    this.isRange = isRange;
    this.which = which;
    this.rowCount = values.length;
  }

  /** natural logarithms; NaN where the value is not above nought */
  get logs(): Float64Array {
    this.knownLogs ??= this.values.map((value) => (value > 0 ? Math.log(value) : Number.NaN));
    return this.knownLogs;
  }

  get filledShare(): number {
    return this.tally.filled / this.rowCount;
  }

  get numbers(): number {
    return this.tally.numbers;
  }

  get texts(): number {
    return this.tally.texts;
  }

  get sizes(): number {
    return this.tally.sizes;
  }

  /** cells in feet and inches */
  get feetInches(): number {
    return this.tally.feetInches;
  }

  /** cells such as "12 @ 200" */
  get counted(): number {
    return this.tally.counted;
  }

  get inchTags(): number {
    return this.tally.inchTags;
  }

  get canadaTags(): number {
    return this.tally.canadaTags;
  }

  get isText(): boolean {
    return this.texts > this.tally.filled * COLUMN.value.mostly;
  }

  get isNumber(): boolean {
    return this.numbers >= this.tally.filled * COLUMN.value.mostly;
  }

  get isSize(): boolean {
    return this.sizes >= this.tally.filled * COLUMN.value.mostly;
  }

  /** values above nought, sorted */
  get sorted(): Float64Array {
    return this.statistics.sorted;
  }

  get middle(): number {
    return this.at(1 / 2);
  }

  get low(): number {
    return this.at(COLUMN.value.lowShare);
  }

  get high(): number {
    return this.at(COLUMN.value.highShare);
  }

  get wholeShare(): number {
    return this.given.wholeShare ?? this.statistics.wholeShare;
  }

  get distinct(): number {
    return this.statistics.distinct;
  }

  /** half a unit of the last place that the column keeps */
  get half(): number {
    this.knownHalf ??= this.given.half ?? halfPlace(this.values);
    return this.knownHalf;
  }

  /** share of rows that are the row above plus one */
  get runningShare(): number {
    return this.statistics.runningShare;
  }

  private at(share: number): number {
    const { sorted } = this.statistics;
    return sorted[Math.floor(sorted.length * share)] ?? Number.NaN;
  }

  private get statistics(): Statistics {
    this.known ??= statisticsOf(this.values);
    return this.known;
  }
}

interface Statistics {
  readonly sorted: Float64Array;
  readonly wholeShare: number;
  readonly distinct: number;
  readonly runningShare: number;
}

function statisticsOf(values: Float64Array): Statistics {
  const sorted = values.filter((value) => value > 0).sort();
  let [whole, distinct, running] = [0, 0, 0];
  for (let index = 0; index < sorted.length; index += 1) {
    if (Number.isInteger(sorted[index])) whole += 1;
    if (index === 0 || sorted[index] !== sorted[index - 1]) distinct += 1;
  }
  for (let row = 1; row < values.length; row += 1) {
    if (values[row] === (values[row - 1] as number) + 1) running += 1;
  }
  return {
    sorted,
    wholeShare: sorted.length === 0 ? 0 : whole / sorted.length,
    distinct,
    runningShare: values.length > 1 ? running / (values.length - 1) : 0,
  };
}

function halfPlace(values: Float64Array): number {
  const { mostDecimals, decimalsOf } = COLUMN.value;
  const scale = 10 ** mostDecimals;
  let places = 0;
  for (let row = 0; row < Math.min(values.length, decimalsOf); row += 1) {
    const value = values[row] as number;
    if (!(value > 0) || Number.isInteger(value)) continue;
    let digits = Math.round(value * scale);
    let kept = mostDecimals;
    while (kept > places && digits % 10 === 0) {
      digits /= 10;
      kept -= 1;
    }
    places = Math.max(places, kept);
  }
  return 10 ** -places / 2;
}

/** The columns of some rows in which anything stands, from left to right. */
export function valueColumns(
  rows: readonly (readonly (CellValue | undefined)[])[],
  from: number,
  to: number,
): ValueColumn[] {
  const columns: ValueColumn[] = [];
  const room = new Room(rows.length, to - from + 1);
  for (let column = from; column <= to; column += 1) {
    const one = columnOf(rows, column, room);
    if (one !== null) columns.push(one);
  }
  return columns;
}

/** The arrays of all columns in one piece of memory: of a short list their making cost more than their use. */
class Room {
  readonly #buffer: ArrayBuffer;
  #at = 0;

  constructor(
    private readonly rowCount: number,
    columnCount: number,
  ) {
    this.#buffer = new ArrayBuffer(this.#ofColumn * Math.max(0, columnCount));
  }

  /** Bytes of one column, so that the next begins where a number may. */
  get #ofColumn(): number {
    const { BYTES_PER_ELEMENT: whole } = Float64Array;
    const bytes = this.rowCount * (whole + 2 * Int32Array.BYTES_PER_ELEMENT + 2);
    return Math.ceil(bytes / whole) * whole;
  }

  column(): Pick<Parts, "values" | "ids" | "labels" | "isFilled" | "isRange"> {
    const { rowCount } = this;
    const values = new Float64Array(this.#buffer, this.#at, rowCount).fill(Number.NaN);
    const ids = new Int32Array(this.#buffer, this.#at + values.byteLength, rowCount).fill(-1);
    const labels = new Int32Array(this.#buffer, ids.byteOffset + ids.byteLength, rowCount).fill(-1);
    const isFilled = new Uint8Array(this.#buffer, labels.byteOffset + labels.byteLength, rowCount);
    const isRange = new Uint8Array(this.#buffer, isFilled.byteOffset + rowCount, rowCount);
    this.#at += this.#ofColumn;
    return { values, ids, labels, isFilled, isRange };
  }
}

function columnOf(
  rows: readonly (readonly (CellValue | undefined)[])[],
  column: number,
  room: Room,
): ValueColumn | null {
  const count = rows.length;
  if (rows.every((row) => (row[column]?.kind ?? "blank") === "blank")) return null;
  const { values, ids, labels, isFilled, isRange } = room.column();
  const known = new Map<string | number, number>();
  const tally = emptyTally();
  for (let row = 0; row < count; row += 1) {
    const cell = rows[row]?.[column];
    if (cell === undefined || cell.kind === "blank") continue;
    tally.filled += 1;
    isFilled[row] = 1;
    if (cell.kind === "ditto") continue;
    const label = idOf(known, cell.label ?? cell.value);
    labels[row] = label;
    if (cell.kind === "text") {
      tally.texts += 1;
      continue;
    }
    values[row] = cell.value;
    ids[row] = cell.label === null ? label : idOf(known, cell.value);
    countKind(cell, tally);
    if (cell.kind === "range") isRange[row] = 1;
  }
  return new ValueColumn(
    {
      column,
      places: [column],
      bySize: [],
      isFeetBesideInches: false,
      which: null,
      values,
      ids,
      labels,
      isFilled,
      isRange,
    },
    tally,
  );
}

function emptyTally(): Tally {
  return {
    filled: 0,
    numbers: 0,
    texts: 0,
    sizes: 0,
    feetInches: 0,
    counted: 0,
    inchTags: 0,
    canadaTags: 0,
  };
}

function countKind(cell: CellValue, tally: Tally): void {
  if (cell.kind === "size") {
    tally.sizes += 1;
    if (cell.tag === "inch") tally.inchTags += 1;
    if (cell.tag === "canada") tally.canadaTags += 1;
    return;
  }
  tally.numbers += 1;
  if (cell.kind === "feetInches") tally.feetInches += 1;
  if (cell.kind === "counted") tally.counted += 1;
}

function idOf(known: Map<string | number, number>, value: string | number): number {
  let id = known.get(value);
  if (id === undefined) {
    id = known.size;
    known.set(value, id);
  }
  return id;
}

/** Neighbouring columns of which each row fills one, as one column that also tells which. */
export function groupedBySize(parts: readonly ValueColumn[]): ValueColumn {
  const rowCount = parts[0]?.rowCount ?? 0;
  const values = new Float64Array(rowCount).fill(Number.NaN);
  const which = new Int16Array(rowCount).fill(-1);
  for (let row = 0; row < rowCount; row += 1) {
    for (let index = 0; index < parts.length; index += 1) {
      const value = parts[index]?.values[row] as number;
      if (!(value > 0)) continue;
      values[row] = value;
      which[row] = index;
    }
  }
  const places = parts.map(({ column }) => column);
  // the finest place kept by any of them
  const half = Math.min(...parts.map((one) => one.half));
  return combined(values, { places, bySize: parts, which, isFeetBesideInches: false }, half, false);
}

/** Whole feet beside inches, as one column in inches. */
export function feetBesideInches(
  feet: ValueColumn,
  inches: ValueColumn,
  perFoot: number,
  half: number,
): ValueColumn {
  const values = feet.values.map((value, row) => value * perFoot + (inches.values[row] || 0));
  const places = [feet.column, inches.column];
  return combined(values, { places, bySize: [], which: null, isFeetBesideInches: true }, half, true);
}

function combined(
  values: Float64Array,
  given: Pick<Parts, "places" | "bySize" | "which" | "isFeetBesideInches">,
  half: number,
  isInFeet: boolean,
): ValueColumn {
  const rowCount = values.length;
  const known = new Map<string | number, number>();
  const ids = new Int32Array(rowCount).fill(-1);
  const isFilled = new Uint8Array(rowCount);
  const tally = emptyTally();
  for (let row = 0; row < rowCount; row += 1) {
    if (Number.isNaN(values[row])) continue;
    ids[row] = idOf(known, values[row] as number);
    isFilled[row] = 1;
    tally.filled += 1;
  }
  tally.numbers = tally.filled;
  if (isInFeet) tally.feetInches = tally.filled;
  const column = given.places[0] ?? 0;
  const isRange = new Uint8Array(rowCount);
  const parts = { ...given, column, values, ids, labels: ids, isFilled, isRange };
  return new ValueColumn(parts, tally, { half, wholeShare: 0 });
}
