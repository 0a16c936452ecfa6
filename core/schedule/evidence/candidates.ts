import { CANDIDATE, COLUMN, WORD } from "./evidence.data";
import type { Factor } from "./log-odds";
import { isEverydaySize, type MassTable } from "./mass-tables";
import { feetBesideInches, type ValueColumn } from "./value-column";
import type { EvidenceRole, EvidenceUnit, Words } from "./word-reading";

/** A column that may hold sizes, with the tables it may be read by. */
export interface SizeCandidate {
  readonly column: ValueColumn;
  readonly tables: readonly { readonly table: MassTable; readonly factor: Factor }[];
  readonly worth: number;
}

/** What may count the bars of a row: a column, two factors, or nothing. */
export interface CountCandidate extends Factor {
  readonly columns: readonly ValueColumn[];
  readonly worth: number;
}

/** What a word adds to a reading of a column: about one row of proof. */
export function wordWorth(words: Words | null, column: number, role: EvidenceRole): number {
  const word = words?.get(column);
  return word === undefined ? 0 : word.role === role ? WORD.value.role : WORD.value.otherRole;
}

/** What a unit written in the header adds. */
export function unitWorth(words: Words | null, column: number, unit: EvidenceUnit | null): number {
  const word = words?.get(column);
  if (word === undefined || word.unit === null || word.by === "guessed") return 0;
  return word.unit === unit ? WORD.value.unit : WORD.value.otherUnit;
}

/** Columns of numbers filled often enough to count. */
export function numberColumns(columns: readonly ValueColumn[]): ValueColumn[] {
  const least = (column: ValueColumn): number => Math.max(2, COLUMN.value.leastFilled * column.rowCount);
  return columns.filter((column) => column.isNumber && column.sorted.length >= least(column));
}

/** The columns that may hold sizes, the likeliest first. */
export function sizeCandidates(
  columns: readonly ValueColumn[],
  tables: readonly MassTable[],
  words: Words | null,
): SizeCandidate[] {
  return columns
    .map((column) => sizeCandidate(column, tables, words))
    .filter((one): one is SizeCandidate => one !== null)
    .sort((one, other) => other.worth - one.worth)
    .slice(0, CANDIDATE.value.sizes);
}

function sizeCandidate(
  column: ValueColumn,
  tables: readonly MassTable[],
  words: Words | null,
): SizeCandidate | null {
  const c = CANDIDATE.value;
  if (column.sorted.length === 0) return null;
  const shareIn = (names: readonly MassTable["name"][]): number =>
    share(column, (value) => tables.some(({ name, masses }) => names.includes(name) && masses.has(value)));
  const metric = shareIn(["own", "metric", "soft", "canada"]);
  const inch = shareIn(["inch"]);
  const asSize = column.isSize && !column.isText && Math.max(metric, inch) > c.sizeInTable;
  const asNumber =
    column.isNumber &&
    (column.wholeShare > c.numberWhole || metric > c.numberInTable) &&
    (metric > c.numberInTable || inch > c.numberInInches) &&
    column.distinct <= c.mostSizes &&
    column.filledShare > c.sizeFilled;
  if (!asSize && !asNumber) return null;
  const names = tablesFor(column, inch);
  const likely = tables.filter(({ name, masses }) => names.includes(name) && holdsMost(column, masses));
  const isTagged = column.isSize;
  const isAllDifferent =
    column.distinct > column.rowCount * c.differentShare && column.rowCount > c.differentRows;
  const worth =
    (isTagged ? c.tagBonus : c.perColumn * column.column) +
    (share(column, isEverydaySize) > c.commonShare ? c.commonBonus : 0) +
    (column.distinct > 1 ? 0 : c.constantSize) +
    (isAllDifferent ? c.different : 0) +
    wordWorth(words, column.column, "size");
  return { column, worth, tables: likely.map((table) => ({ table, factor: massFactor(column, table) })) };
}

function tablesFor(column: ValueColumn, inch: number): MassTable["name"][] {
  const c = CANDIDATE.value;
  if (column.isSize && column.inchTags > column.sizes * c.tagged) return ["own", "inch", "soft"];
  if (column.isSize && column.canadaTags > column.sizes * c.tagged) return ["own", "canada"];
  const isPlain = !column.isSize && column.middle <= c.largestInInches && inch > c.numberInInches;
  return isPlain ? ["own", "inch", "metric"] : ["own", "metric", "soft", "canada"];
}

function holdsMost(column: ValueColumn, masses: ReadonlyMap<number, number>): boolean {
  return share(column, (value) => masses.has(value)) > COLUMN.value.mostly;
}

function massFactor(column: ValueColumn, { masses }: MassTable): Factor {
  const { values, ids } = column;
  const logs = new Float64Array(values.length).fill(Number.NaN);
  // few sizes stand in many rows
  const known: number[] = [];
  for (let row = 0; row < values.length; row += 1) {
    const id = ids[row] as number;
    if (id >= 0) logs[row] = known[id] ??= Math.log(masses.get(values[row] as number) ?? Number.NaN);
  }
  return { logs, ids };
}

function share(column: ValueColumn, holds: (value: number) => boolean): number {
  let yes = 0;
  for (const value of column.sorted) if (holds(value)) yes += 1;
  return column.sorted.length === 0 ? 0 : yes / column.sorted.length;
}

/** Columns of whole numbers that may count bars or members. */
export function countColumns(
  numbers: readonly ValueColumn[],
  grouped: ReadonlySet<ValueColumn>,
): ValueColumn[] {
  const c = CANDIDATE.value;
  return numbers.filter(
    (column) =>
      !grouped.has(column) &&
      column.wholeShare > c.countWhole &&
      column.feetInches === 0 &&
      column.middle >= 1 &&
      column.middle <= c.mostCount &&
      column.filledShare > c.countFilled,
  );
}

/** Every way in which a row's bars may be counted: one column, the product of two, or not at all. */
export function countCandidates(
  counts: readonly ValueColumn[],
  sizes: readonly SizeCandidate[],
  isCovered: (one: ValueColumn, other: ValueColumn) => boolean,
  rowCount: number,
): CountCandidate[] {
  const c = CANDIDATE.value;
  const likeSize = new Set(
    sizes.filter(({ column }) => column.distinct <= c.likeSizeDistinct).map(({ column }) => column),
  );
  const single = counts.map((column) => ({
    columns: [column],
    logs: column.logs,
    ids: column.ids,
    worth:
      (likeSize.has(column) ? c.likeSize : 0) + (column.runningShare > c.factorRunning ? c.runningCount : 0),
  }));
  const none = {
    columns: [],
    logs: new Float64Array(rowCount),
    ids: new Int32Array(rowCount),
    worth: c.noCount,
  };
  const pairs: CountCandidate[] = [];
  for (let first = 0; first < counts.length; first += 1) {
    for (let second = first + 1; second < counts.length; second += 1) {
      const [one, other] = [counts[first] as ValueColumn, counts[second] as ValueColumn];
      if (areFactors(one, other) && !isCovered(one, other)) pairs.push(product(one, other));
    }
  }
  return [...single, none, ...pairs];
}

function areFactors(one: ValueColumn, other: ValueColumn): boolean {
  const c = CANDIDATE.value;
  const may = (column: ValueColumn): boolean =>
    column.middle < c.factorMiddle &&
    (column.distinct > 1 || column.middle > 1) &&
    column.runningShare < c.factorRunning;
  return may(one) && may(other) && one.distinct + other.distinct > c.factorsDistinct;
}

function product(one: ValueColumn, other: ValueColumn): CountCandidate {
  const logs = one.logs.map((log, row) => log + (other.logs[row] as number));
  // two ids as one: no two products share it
  const ids = one.ids.map((id, row) => id * one.rowCount + (other.ids[row] as number));
  return { columns: [one, other], logs, ids, worth: CANDIDATE.value.twoFactors };
}

/** Columns that may hold a bar's length, feet beside inches among them. */
export function lengthColumns(
  columns: readonly ValueColumn[],
  numbers: readonly ValueColumn[],
  grouped: ReadonlySet<ValueColumn>,
): ValueColumn[] {
  const c = CANDIDATE.value;
  const own = numbers.filter(
    (column) =>
      !grouped.has(column) &&
      column.sorted.length > c.lengthFilled * column.rowCount &&
      column.runningShare < c.running,
  );
  return [...own, ...feetPairs(columns)];
}

function feetPairs(columns: readonly ValueColumn[]): ValueColumn[] {
  const c = CANDIDATE.value;
  const pairs: ValueColumn[] = [];
  for (let index = 0; index + 1 < columns.length; index += 1) {
    const [feet, inches] = [columns[index] as ValueColumn, columns[index + 1] as ValueColumn];
    const isPair =
      inches.column === feet.column + 1 &&
      feet.isNumber &&
      inches.isNumber &&
      feet.wholeShare > c.feetWhole &&
      inches.high < c.inchesHigh &&
      feet.filledShare > c.feetFilled &&
      // some inches are nought
      inches.sorted.length < inches.rowCount &&
      feet.high < c.feetHigh &&
      inches.filledShare > c.inchesFilled;
    if (isPair) pairs.push(feetBesideInches(feet, inches, c.inchesPerFoot, c.inchHalf));
  }
  return pairs;
}
