import type { Standard } from "../../standards/port";
import type { Cell } from "../sheet";
import { commaHabits } from "./comma-habit";
import { LAYOUT, LOOK } from "./evidence.data";
import { massTables } from "./mass-tables";
import { type ColumnProfile, keptRows, type Segment, segmentsOf } from "./pick-rows";
import { type CellValue, valueReader } from "./read-value";
import { type TableEvidence, tableEvidence } from "./table-evidence";
import { valueColumns } from "./value-column";

/** A table that arithmetic found without any header word. */
export interface FoundTable {
  /** its first and last row, and the columns between which it stands; where bars run down columns, turned */
  readonly firstRow: number;
  readonly lastRow: number;
  readonly left: number;
  readonly right: number;
  /** columns left of it that several groups of columns share; from 0 */
  readonly shared: number;
  readonly rows: readonly number[];
  readonly evidence: TableEvidence;
}

/** What arithmetic finds on a whole sheet. */
export interface FoundTables {
  /** bars stand in columns: rows and columns above are exchanged */
  readonly isTransposed: boolean;
  readonly decimalComma: boolean;
  readonly tables: readonly FoundTable[];
}

/**
 * The tables of bars on a sheet without header words, or with words that nobody knows: several below each other,
 * side by side, groups of columns in a row, and bars that stand in columns.
 *
 * @param cells all rows of the sheet; two thousand of them are looked at
 */
export function findTables(cells: readonly (readonly Cell[])[], standard: Standard): FoundTables {
  const looked = cells.slice(0, LOOK.value.mostRows);
  let best: FoundTables | null = null;
  let most = Number.NEGATIVE_INFINITY;
  for (const decimalComma of commaHabits(looked)) {
    const found = foundUnder(looked, standard, decimalComma);
    const score = found.tables.reduce((sum, { evidence }) => sum + Math.max(0, evidence.score), 0);
    if (score <= most) continue;
    best = found;
    most = score;
  }
  return best ?? { isTransposed: false, decimalComma: false, tables: [] };
}

function foundUnder(
  cells: readonly (readonly Cell[])[],
  standard: Standard,
  decimalComma: boolean,
): FoundTables {
  const read = valueReader(decimalComma);
  const upright = cells.map((line) => line.map(read));
  const isTransposed = runsDown(upright);
  const values = isTransposed ? transposed(upright) : upright;
  const tables: FoundTable[] = [];
  for (const segment of segmentsOf(values)) {
    const rows = keptRows(values, segment);
    if (rows.length < LOOK.value.leastRows) continue;
    for (const side of sidesOf(values, segment, rows)) {
      const table = tableOf(values, rows, side, standard);
      if (table !== null) tables.push(table);
    }
  }
  return { isTransposed, decimalComma, tables };
}

function tableOf(
  values: readonly (readonly CellValue[])[],
  rows: readonly number[],
  { left, right, shared }: Side,
  standard: Standard,
): FoundTable | null {
  const step = Math.ceil(rows.length / LOOK.value.sampled);
  const looked = rows.filter((_, index) => index % step === 0);
  const lines = looked.map((row) => values[row] as readonly CellValue[]);
  const own = valueColumns(lines, left, right);
  const columns = shared > 0 ? [...valueColumns(lines, 0, shared - 1), ...own] : own;
  if (columns.length < LOOK.value.valuesOfBar) return null;
  const evidence = tableEvidence(columns, massTables(standard), null);
  if (evidence === null) return null;
  const [firstRow, lastRow] = [rows[0] as number, rows[rows.length - 1] as number];
  return { firstRow, lastRow, left, right, shared, rows: looked, evidence };
}

/** Bars run down columns where one row holds sizes with repeats, and twice as many as any column. */
function runsDown(values: readonly (readonly CellValue[])[]): boolean {
  const { sizesAcross, repeats, timesDown } = LAYOUT.value;
  let across = 0;
  const down: number[] = [];
  for (const line of values) {
    const sizes: number[] = [];
    line.forEach(({ kind, value }, column) => {
      if (kind !== "size") return;
      sizes.push(value);
      down[column] = (down[column] ?? 0) + 1;
    });
    // without repeats every header by size looks so
    if (new Set(sizes).size < sizes.length * repeats) across = Math.max(across, sizes.length);
  }
  return across >= sizesAcross && across > Math.max(0, ...down.filter((count) => count > 0)) * timesDown;
}

function transposed(values: readonly (readonly CellValue[])[]): CellValue[][] {
  const width = values.reduce((widest, line) => Math.max(widest, line.length), 0);
  const blank = valueReader(false)(null);
  return Array.from({ length: width }, (_, column) => values.map((line) => line[column] ?? blank));
}

interface Side {
  readonly left: number;
  readonly right: number;
  readonly shared: number;
}

/** Schedules side by side, or groups of columns in a row that each hold a bar. */
function sidesOf(
  values: readonly (readonly CellValue[])[],
  segment: Segment,
  rows: readonly number[],
): Side[] {
  const whole = [{ left: 0, right: segment.width - 1, shared: 0 }];
  const sizes = sizeColumns(values, segment, rows);
  if (sizes.length < 2) return whole;
  return besideGaps(values, segment, rows, sizes) ?? inGroups(segment, sizes) ?? whole;
}

function sizeColumns(
  values: readonly (readonly CellValue[])[],
  segment: Segment,
  rows: readonly number[],
): number[] {
  const { sizeFilled, repeatsDown } = LAYOUT.value;
  const columns: number[] = [];
  segment.profile.forEach(({ kind, filled }, column) => {
    if (kind !== "size" || filled <= sizeFilled) return;
    const sizes = rows.flatMap((row) => {
      const cell = values[row]?.[column];
      return cell?.kind === "size" ? [cell.value] : [];
    });
    if (new Set(sizes).size <= Math.max(2, sizes.length * repeatsDown)) columns.push(column);
  });
  return columns;
}

/** An empty column between two columns of sizes, with numbers on either side. */
function besideGaps(
  values: readonly (readonly CellValue[])[],
  { profile, width }: Segment,
  rows: readonly number[],
  sizes: readonly number[],
): Side[] | null {
  const { leastBeside } = LAYOUT.value;
  const numbersIn = (part: readonly ColumnProfile[]): number =>
    part.filter(({ kind }) => kind === "number" || kind === "feetInches").length;
  const gaps: number[] = [];
  for (let column = 1; column < width - 1; column += 1) {
    const isEmpty = rows.every((row) => (values[row]?.[column]?.kind ?? "blank") === "blank");
    if (!isEmpty || !sizes.some((one) => one < column) || !sizes.some((one) => one > column)) continue;
    const beside = Math.min(numbersIn(profile.slice(0, column)), numbersIn(profile.slice(column + 1)));
    if (beside >= leastBeside) gaps.push(column);
  }
  if (gaps.length === 0) return null;
  const sides: Side[] = [];
  let left = 0;
  for (const gap of [...gaps, width]) {
    if (gap - left >= leastBeside) sides.push({ left, right: gap - 1, shared: 0 });
    left = gap + 1;
  }
  return sides;
}

/** Groups of columns of equal step and equal kinds; the columns left of the first are shared. */
function inGroups({ profile, width }: Segment, sizes: readonly number[]): Side[] | null {
  const { leastStep, spare } = LAYOUT.value;
  const [first, second] = sizes;
  if (first === undefined || second === undefined) return null;
  const step = second - first;
  const isEven = sizes.every(
    (column, index) => index === 0 || column - (sizes[index - 1] as number) === step,
  );
  if (step < leastStep || !isEven) return null;
  for (let offset = 0; offset < step; offset += 1) {
    const start = first - offset;
    const end = start + step * sizes.length;
    if (start < 0 || end > width || width - end > spare) continue;
    const kinds = (from: number): string =>
      Array.from({ length: step }, (_, at) => profile[from + at]?.kind ?? "blank").join();
    if (!sizes.every((column) => kinds(column - offset) === kinds(start))) continue;
    return sizes.map((column) => ({
      left: column - offset,
      right: column - offset + step - 1,
      shared: start,
    }));
  }
  return null;
}
