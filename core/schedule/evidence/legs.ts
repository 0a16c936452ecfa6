import { LEG_UNITS, LEGS, type LengthName, METRES, SCORE } from "./evidence.data";
import { logOdds } from "./log-odds";
import { isSmall } from "./magnitude";
import type { ValueColumn } from "./value-column";

/** Columns of legs that a column of lengths agrees with. */
export interface LegSet {
  readonly length: ValueColumn;
  readonly columns: readonly ValueColumn[];
  /** one of the legs' unit in the length's unit */
  readonly ratio: number;
  readonly unit: LengthName | null;
  readonly legUnit: LengthName | null;
  /** rows of one leg that keep and break it; rows of several */
  readonly one: number;
  readonly oneBroken: number;
  readonly several: number;
  readonly severalBroken: number;
  readonly brokenRows: readonly number[];
  readonly worth: number;
}

const UNIT_RATIOS = LEG_UNITS.value.map(([unit, legUnit]) => ({
  unit,
  legUnit,
  ratio: unit === null || legUnit === null ? 1 : METRES.value[legUnit] / METRES.value[unit],
}));

/** Sets of neighbouring columns that make up a column of lengths, the surest first. */
export function legSets(
  columns: readonly ValueColumn[],
  grouped: ReadonlySet<ValueColumn>,
  lengths: readonly ValueColumn[],
  rows: readonly number[],
): LegSet[] {
  const found: LegSet[] = [];
  const stretches = stretchesOf(columns, grouped);
  for (const length of lengths) {
    if (isSmall(length)) continue;
    for (const part of stretches) {
      if (part.some(({ column }) => length.places.includes(column))) continue;
      const set = bestRatio(length, part, rows);
      const bare = set === null ? null : withoutCodes(set, rows);
      if (bare !== null) found.push(bare);
    }
  }
  const order = (set: LegSet): number => set.worth + LEGS.value.perColumn * set.columns.length;
  return found.sort((one, other) => order(other) - order(one));
}

function stretchesOf(
  columns: readonly ValueColumn[],
  grouped: ReadonlySet<ValueColumn>,
): (readonly ValueColumn[])[] {
  const { mostColumns, mostGap, others } = LEGS.value;
  const isLeg = (column: ValueColumn): boolean => column.isNumber && !grouped.has(column);
  const stretches: (readonly ValueColumn[])[] = [];
  for (let from = 0; from < columns.length; from += 1) {
    for (let to = from; to < Math.min(columns.length, from + mostColumns); to += 1) {
      const [column, before] = [columns[to] as ValueColumn, columns[to - 1]];
      const isFar = to > from && before !== undefined && column.column - before.column > mostGap;
      if (!isLeg(column) || isFar) break;
      const part = columns.slice(from, to + 1);
      const rest = part.slice(1);
      if (rest.length === 0 || rest.some(({ filledShare }) => filledShare < others)) stretches.push(part);
    }
  }
  return stretches;
}

function bestRatio(
  length: ValueColumn,
  part: readonly ValueColumn[],
  rows: readonly number[],
): LegSet | null {
  const { leastRatios, ratioWithin } = LEGS.value;
  const middle = middleRatio(length, part, rows);
  if (middle === null || middle.of < leastRatios) return null;
  let best: LegSet | null = null;
  for (const units of UNIT_RATIOS) {
    if (Math.abs(middle.log - Math.log10(units.ratio)) > ratioWithin) continue;
    const set = testedSet(length, part, rows, units);
    if (set !== null && (best === null || set.worth > best.worth)) best = set;
  }
  return best;
}

function middleRatio(
  length: ValueColumn,
  part: readonly ValueColumn[],
  rows: readonly number[],
): { log: number; of: number } | null {
  const step = Math.ceil(rows.length / LEGS.value.ratioRows);
  const ratios: number[] = [];
  for (let index = 0; index < rows.length; index += step) {
    const row = rows[index] as number;
    let sum = 0;
    for (const { values } of part) sum += values[row] || 0;
    const ratio = (length.values[row] as number) / sum;
    if (ratio > 0 && Number.isFinite(ratio)) ratios.push(Math.log10(ratio));
  }
  ratios.sort((one, other) => one - other);
  const log = ratios[ratios.length >> 1];
  return log === undefined ? null : { log, of: ratios.length };
}

function testedSet(
  length: ValueColumn,
  part: readonly ValueColumn[],
  rows: readonly number[],
  units: (typeof UNIT_RATIOS)[number],
): LegSet | null {
  const { set, sums } = testedLegs(length, part, rows, units);
  const worth = worthOf(set, sums);
  if (worth === null) return null;
  const isThin = (part[0]?.filledShare ?? 0) < LEGS.value.firstFilled;
  return { ...set, worth: worth + (isThin ? LEGS.value.firstEmpty : 0) };
}

function testedLegs(
  length: ValueColumn,
  part: readonly ValueColumn[],
  rows: readonly number[],
  units: (typeof UNIT_RATIOS)[number],
): { set: Omit<LegSet, "worth">; sums: number; tested: number } {
  const l = LEGS.value;
  let [one, oneBroken, several, severalBroken, sums] = [0, 0, 0, 0, 0];
  let testedRows = 0;
  const brokenRows: number[] = [];
  const seen = new Set<number>();
  for (const row of rows) {
    const long = length.values[row] as number;
    let [sum, largest, filled] = [0, 0, 0];
    for (const { values } of part) {
      const leg = (values[row] as number) * units.ratio;
      if (!(leg > 0)) continue;
      sum += leg;
      filled += 1;
      if (leg > largest) largest = leg;
    }
    if (filled === 0 || !(long > 0)) continue;
    testedRows += 1;
    const key = Math.log(long) * sum;
    const worth = seen.has(key) ? SCORE.value.seenBefore : 1;
    seen.add(key);
    const slack = length.half + l.slack * long;
    if (filled === 1) {
      if (Math.abs(long - sum) <= slack + l.one * long) one += worth;
      else {
        oneBroken += worth;
        brokenRows.push(row);
      }
      continue;
    }
    const least = Math.min(largest * l.shortest, sum * l.shortestSum);
    if (long >= least && long <= sum * l.longest + slack) several += worth;
    else {
      severalBroken += worth;
      brokenRows.push(row);
    }
    if (Math.abs(long - sum) < slack + l.sum * long) sums += worth;
  }
  const tested = { length, columns: part, ...units, one, oneBroken, several, severalBroken, brokenRows };
  return { set: tested, sums, tested: testedRows };
}

/** How many rows keep a given length with given legs. */
export function legAgreement(
  length: ValueColumn,
  legs: readonly ValueColumn[],
  ratio: number,
  rows: readonly number[],
): { kept: number; tested: number; share: number; bars: number; brokenRows: readonly number[] } {
  const { set, tested } = testedLegs(length, legs, rows, { unit: null, legUnit: null, ratio });
  const bars = set.one + set.several + set.oneBroken + set.severalBroken;
  const share = bars === 0 ? 0 : (set.one + set.several) / bars;
  const { brokenRows } = set;
  return { kept: tested - brokenRows.length, tested, share, bars, brokenRows };
}

function worthOf(set: Omit<LegSet, "worth">, sums: number): number | null {
  const l = LEGS.value;
  const { one, oneBroken, several, severalBroken } = set;
  const bent = several + severalBroken;
  const isSum = sums > l.sumRows && sums > l.sumShare * bent;
  const worth =
    logOdds(one, oneBroken, l.oneChance) +
    logOdds(several, severalBroken, l.bandChance) +
    (isSum ? logOdds(sums, bent - sums, l.sumChance) : 0);
  const isKept = one + several >= l.kept * (one + oneBroken + bent) && one >= l.keptOne * (one + oneBroken);
  return worth > l.least && isKept ? worth : null;
}

/** Codes and running marks at either end are no legs. */
function withoutCodes(set: LegSet, rows: readonly number[]): LegSet | null {
  let columns = set.columns;
  while (columns.length > 1 && isCode(columns[0] as ValueColumn, columns, set, rows))
    columns = columns.slice(1);
  while (columns.length > 1 && isCode(columns[columns.length - 1] as ValueColumn, columns, set, rows)) {
    columns = columns.slice(0, -1);
  }
  const [only, second] = columns;
  if (only !== undefined && second === undefined && isCode(only, columns, set, rows)) return null;
  return { ...set, columns };
}

function isCode(
  column: ValueColumn,
  columns: readonly ValueColumn[],
  set: LegSet,
  rows: readonly number[],
): boolean {
  const l = LEGS.value;
  if (column.runningShare > l.running) return true;
  if (columns.length < 2) return false;
  const isFew = column.distinct <= Math.max(l.codeDistinct, l.codeDistinctOf * column.sorted.length);
  const isTiny = column.middle * set.ratio < l.codeSize * set.length.middle;
  if (!isTiny && !(isFew && column.middle < l.codeMiddle)) return false;
  const rest = columns.filter((one) => one !== column);
  return tellsPattern(column, rest, rows, 0) > l.codeTells && standsBeside(column, rest, rows) > l.codeTells;
}

/** Share of rows whose pattern of filled legs is the usual one for the value in `column`. */
export function tellsPattern(
  column: ValueColumn,
  legs: readonly ValueColumn[],
  rows: readonly number[],
  leastRows: number,
): number {
  const byValue = new Map<number, Map<number, number>>();
  for (const row of rows) {
    if (column.isFilled[row] === 0) continue;
    const value = column.labels[row] as number;
    const patterns = byValue.get(value) ?? new Map<number, number>();
    const pattern = patternOf(legs, row);
    byValue.set(value, patterns.set(pattern, (patterns.get(pattern) ?? 0) + 1));
  }
  let [usual, all] = [0, 0];
  for (const patterns of byValue.values()) {
    const counts = [...patterns.values()];
    const sum = counts.reduce((so, count) => so + count, 0);
    if (leastRows > 0 && sum < 2) continue;
    usual += Math.max(...counts);
    all += sum;
  }
  return all > leastRows ? usual / all : 0;
}

function patternOf(legs: readonly ValueColumn[], row: number): number {
  let pattern = 1;
  for (const { values, isRange } of legs) {
    const isFilled = (values[row] as number) > 0 || isRange[row] === 1;
    pattern = pattern * 2 + (isFilled ? 1 : 0);
  }
  return pattern;
}

function standsBeside(column: ValueColumn, rest: readonly ValueColumn[], rows: readonly number[]): number {
  let [both, some] = [0, 0];
  for (const row of rows) {
    if (!rest.some(({ values }) => (values[row] as number) > 0)) continue;
    some += 1;
    if (column.isFilled[row] === 1) both += 1;
  }
  return some === 0 ? 0 : both / some;
}
