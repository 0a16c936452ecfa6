import { COLUMN } from "./evidence.data";
import type { CellValue } from "./read-value";

/** One column of a table's rows as numbers: what its values are, before anyone says what they mean. */
export interface ValueColumn {
  /** its place on the sheet; the first one where several act as one */
  readonly column: number;
  /** the columns that act as one: feet beside inches, or columns by size; else its own place alone */
  readonly places: readonly number[];
  /** the columns by size, in order; none for a column of its own */
  readonly bySize: readonly ValueColumn[];
  readonly isFeetBesideInches: boolean;
  /** per row; NaN where there is no number */
  readonly values: Float64Array;
  /** natural logarithms; NaN where the value is not above nought */
  readonly logs: Float64Array;
  /** equal values share a number; -1 is blank */
  readonly ids: Int32Array;
  /** equal cells share a number, texts too; -1 is blank */
  readonly labels: Int32Array;
  /** rows in which anything stands */
  readonly isFilled: Uint8Array;
  readonly isDitto: Uint8Array;
  readonly isRange: Uint8Array;
  /** which of the columns by size a row fills; null for a column of its own */
  readonly which: Int16Array | null;
  readonly rowCount: number;
  readonly filledShare: number;
  readonly numbers: number;
  readonly texts: number;
  readonly sizes: number;
  readonly feetInches: number;
  readonly counted: number;
  /** the spacing of "12 @ 200" */
  readonly seconds: Float64Array;
  readonly inchTags: number;
  readonly canadaTags: number;
  /** values above nought, sorted */
  readonly sorted: Float64Array;
  readonly middle: number;
  readonly low: number;
  readonly high: number;
  readonly wholeShare: number;
  readonly distinct: number;
  /** half a unit of the last place that the column keeps */
  readonly half: number;
  /** share of rows that are the row above plus one */
  readonly runningShare: number;
  readonly isText: boolean;
  readonly isNumber: boolean;
  readonly isSize: boolean;
}

/** The columns of some rows in which anything stands, from left to right. */
export function valueColumns(
  rows: readonly (readonly (CellValue | undefined)[])[],
  from: number,
  to: number,
): ValueColumn[] {
  const columns: ValueColumn[] = [];
  for (let column = from; column <= to; column += 1) {
    const one = columnOf(rows, column);
    if (one !== null) columns.push(one);
  }
  return columns;
}

function columnOf(rows: readonly (readonly (CellValue | undefined)[])[], column: number): ValueColumn | null {
  const count = rows.length;
  const values = new Float64Array(count).fill(Number.NaN);
  const seconds = new Float64Array(count).fill(Number.NaN);
  const ids = new Int32Array(count).fill(-1);
  const labels = new Int32Array(count).fill(-1);
  const isFilled = new Uint8Array(count);
  const isDitto = new Uint8Array(count);
  const isRange = new Uint8Array(count);
  const known = new Map<string | number, number>();
  const knownLabels = new Map<string | number, number>();
  const tally = { filled: 0, numbers: 0, texts: 0, sizes: 0, feetInches: 0, counted: 0, inch: 0, canada: 0 };
  for (let row = 0; row < count; row += 1) {
    const cell = rows[row]?.[column];
    if (cell === undefined || cell.kind === "blank") continue;
    tally.filled += 1;
    isFilled[row] = 1;
    if (cell.kind !== "ditto") labels[row] = idOf(knownLabels, cell.label ?? cell.value);
    if (cell.kind === "text") tally.texts += 1;
    else if (cell.kind === "ditto") isDitto[row] = 1;
    else {
      values[row] = cell.value;
      seconds[row] = cell.second;
      countKind(cell, tally);
      if (cell.kind === "range") isRange[row] = 1;
      ids[row] = idOf(known, cell.value);
    }
  }
  if (tally.filled === 0) return null;
  const own = { column, places: [column], bySize: [], isFeetBesideInches: false, which: null, ...tally };
  return withStatistics({ ...own, values, seconds, ids, labels, isFilled, isDitto, isRange });
}

type Tally = {
  filled: number;
  numbers: number;
  texts: number;
  sizes: number;
  feetInches: number;
  counted: number;
  inch: number;
  canada: number;
};

function countKind(cell: CellValue, tally: Tally): void {
  if (cell.kind === "size") {
    tally.sizes += 1;
    if (cell.tag === "inch") tally.inch += 1;
    if (cell.tag === "canada") tally.canada += 1;
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

type Given = Pick<
  ValueColumn,
  | "column"
  | "places"
  | "bySize"
  | "isFeetBesideInches"
  | "which"
  | "values"
  | "seconds"
  | "ids"
  | "labels"
  | "isFilled"
  | "isDitto"
  | "isRange"
> &
  Tally;

function withStatistics(given: Given): ValueColumn {
  const { values, filled, numbers, texts, sizes, inch, canada, ...rest } = given;
  const rowCount = values.length;
  const sorted = values.filter((value) => value > 0).sort();
  const at = (share: number): number => sorted[Math.floor(sorted.length * share)] ?? Number.NaN;
  const { mostly, lowShare, highShare } = COLUMN.value;
  return {
    ...rest,
    values,
    logs: values.map((value) => (value > 0 ? Math.log(value) : Number.NaN)),
    rowCount,
    filledShare: filled / rowCount,
    numbers,
    texts,
    sizes,
    inchTags: inch,
    canadaTags: canada,
    sorted,
    middle: at(1 / 2),
    low: at(lowShare),
    high: at(highShare),
    wholeShare: sorted.length === 0 ? 0 : sorted.filter(Number.isInteger).length / sorted.length,
    distinct: new Set(sorted).size,
    half: halfPlace(sorted),
    runningShare: runningShare(values),
    isText: texts > filled * mostly,
    isNumber: numbers >= filled * mostly,
    isSize: sizes >= filled * mostly,
  };
}

function halfPlace(sorted: Float64Array): number {
  const { mostDecimals, decimalsOf } = COLUMN.value;
  const scale = 10 ** mostDecimals;
  let places = 0;
  for (let index = 0; index < Math.min(sorted.length, decimalsOf); index += 1) {
    let digits = Math.round((sorted[index] as number) * scale);
    if (digits === 0) continue;
    let kept = mostDecimals;
    while (kept > places && digits % 10 === 0) {
      digits /= 10;
      kept -= 1;
    }
    places = Math.max(places, kept);
  }
  return 10 ** -places / 2;
}

function runningShare(values: Float64Array): number {
  let running = 0;
  for (let row = 1; row < values.length; row += 1) {
    if (values[row] === (values[row - 1] as number) + 1) running += 1;
  }
  return values.length > 1 ? running / (values.length - 1) : 0;
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
  const made = combined(values, { places, bySize: parts, which, isFeetBesideInches: false });
  // the finest place kept by any of them
  return { ...made, wholeShare: 0, half: Math.min(...parts.map(({ half }) => half)) };
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
  const made = combined(values, { places, bySize: [], which: null, isFeetBesideInches: true });
  return { ...made, wholeShare: 0, half, feetInches: made.numbers };
}

function combined(
  values: Float64Array,
  given: Pick<ValueColumn, "places" | "bySize" | "which" | "isFeetBesideInches">,
): ValueColumn {
  const rowCount = values.length;
  const known = new Map<string | number, number>();
  const ids = new Int32Array(rowCount).fill(-1);
  const isFilled = new Uint8Array(rowCount);
  let filled = 0;
  for (let row = 0; row < rowCount; row += 1) {
    if (Number.isNaN(values[row])) continue;
    ids[row] = idOf(known, values[row] as number);
    isFilled[row] = 1;
    filled += 1;
  }
  return withStatistics({
    ...given,
    column: given.places[0] ?? 0,
    values,
    ids,
    labels: ids,
    isFilled,
    seconds: new Float64Array(rowCount).fill(Number.NaN),
    isDitto: new Uint8Array(rowCount),
    isRange: new Uint8Array(rowCount),
    filled,
    numbers: filled,
    texts: 0,
    sizes: 0,
    feetInches: 0,
    counted: 0,
    inch: 0,
    canada: 0,
  });
}
