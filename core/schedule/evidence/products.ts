import type { CountCandidate, SizeCandidate } from "./candidates";
import {
  CANDIDATE,
  KILOGRAMS,
  type LengthName,
  LOOK,
  type MassName,
  METRES,
  PRODUCT,
  SCORE,
  TOTAL_UNITS,
} from "./evidence.data";
import { chanceOf, dealtShare, densest, type Factor, type Kept, keptBy, logOdds } from "./log-odds";
import { canBeBars, countLooks, isInFeet, isSmall, unitLooks } from "./magnitude";
import type { MassTable } from "./mass-tables";
import type { ValueColumn } from "./value-column";

/** A column of total lengths, or of lengths by size, that is count x length. */
export interface TotalFit {
  readonly answer: ValueColumn;
  readonly unit: LengthName;
  readonly totalUnit: LengthName;
  readonly kept: Kept;
  readonly worth: number;
}

/** A column of masses, or of masses by size, that is count x length x kg/m. */
export interface MassFit {
  readonly answer: ValueColumn;
  readonly unit: LengthName;
  readonly massUnit: MassName;
  readonly size: SizeCandidate;
  readonly table: MassTable;
  /** per cent that the masses hold for waste */
  readonly waste: number;
  readonly kept: Kept;
  readonly worth: number;
}

/** A reading of length and count with the products that it keeps. */
export interface Product {
  readonly length: ValueColumn;
  readonly count: CountCandidate;
  readonly unit: LengthName;
  readonly total: TotalFit | null;
  readonly mass: MassFit | null;
  readonly worth: number;
}

/** What is searched: columns and the rows of the test. */
export interface ProductSearch {
  readonly lengths: readonly ValueColumn[];
  readonly counts: readonly CountCandidate[];
  readonly sizes: readonly SizeCandidate[];
  readonly answers: readonly ValueColumn[];
  readonly rows: readonly number[];
  readonly rowCount: number;
}

interface UnitPair<To> {
  readonly unit: LengthName;
  readonly to: To;
  readonly constant: number;
}

const LENGTH_NAMES = Object.keys(METRES.value) as LengthName[];
const MASS_NAMES = Object.keys(KILOGRAMS.value) as MassName[];
const TOTAL_PAIRS: readonly UnitPair<LengthName>[] = TOTAL_UNITS.value.map(([unit, to]) => ({
  unit,
  to,
  constant: Math.log(METRES.value[unit] / METRES.value[to]),
}));
const MASS_PAIRS: readonly UnitPair<MassName>[] = LENGTH_NAMES.flatMap((unit) =>
  MASS_NAMES.map((to) => ({
    unit,
    to,
    constant: Math.log(METRES.value[unit] / KILOGRAMS.value[to]),
  })),
);
const PER_CENT = 100;
const WASTES = PRODUCT.value.wastes.map((waste) => ({ waste, log: Math.log(1 + waste / PER_CENT) }));

/** Every reading of a length and a count that a column of masses or of total lengths confirms. */
export function products(search: ProductSearch): Product[] {
  const tried = new TriedRows(search.rows);
  const found: Product[] = [];
  for (const length of search.lengths) {
    for (const count of search.counts) {
      if (shares(count.columns, length)) continue;
      const bases = tried.sum(length, count);
      const totals = totalFits(search, tried, bases, length, count);
      const masses = massFits(search, tried, bases, length, count);
      found.push(...combined(length, count, totals, masses));
    }
  }
  return found;
}

/** The first look: a few rows spread over the table, their logarithms side by side. */
class TriedRows {
  readonly rows: readonly number[];
  private readonly known = new Map<Factor, Float64Array>();

  constructor(rows: readonly number[]) {
    const step = Math.ceil(rows.length / LOOK.value.tried);
    this.rows = rows.filter((_, index) => index % step === 0);
  }

  logs(factor: Factor): Float64Array {
    let logs = this.known.get(factor);
    if (logs === undefined) {
      logs = Float64Array.from(this.rows, (row) => factor.logs[row] as number);
      this.known.set(factor, logs);
    }
    return logs;
  }

  sum(one: Factor, other: Factor): Float64Array {
    const beside = this.logs(other);
    return this.logs(one).map((log, index) => log + (beside[index] as number));
  }
}

const residuals = new Float64Array(LOOK.value.tried + 1);

/** The constant between an answer and its factors on the first rows; NaN where there is none. */
function constantOf(
  search: ProductSearch,
  tried: TriedRows,
  bases: Float64Array,
  answer: ValueColumn,
  mass: Factor | null,
): number {
  const { totalWindow, massWindow, leastTried, fewRows, triedFew, tried: share } = PRODUCT.value;
  const logs = tried.logs(answer);
  const masses = mass === null ? null : tried.logs(mass);
  for (let index = 0; index < logs.length; index += 1) {
    const beside = masses === null ? 0 : (masses[index] as number);
    residuals[index] = (logs[index] as number) - (bases[index] as number) - beside;
  }
  const found = densest(residuals, logs.length, mass === null ? totalWindow : massWindow);
  const least = search.rowCount < fewRows ? triedFew : share;
  const isSeen = found.of >= Math.min(leastTried, logs.length) && found.share >= least;
  return isSeen ? found.at : Number.NaN;
}

function totalFits(
  search: ProductSearch,
  tried: TriedRows,
  bases: Float64Array,
  length: ValueColumn,
  count: CountCandidate,
): TotalFit[] {
  const { atConstant, totalWithin, totalChance } = PRODUCT.value;
  const [only, second] = count.columns;
  // one bar a row throughout proves nothing
  if (only !== undefined && second === undefined && only.low === 1 && only.high === 1) return [];
  const factors = [count, length];
  const fits: TotalFit[] = [];
  for (const answer of search.answers) {
    if (isTaken(answer, length, count) || (only === undefined && answer.bySize.length === 0)) continue;
    const isGrouped = answer.bySize.length > 0;
    if (isSmall(length) && !isGrouped && isSmallWhole(answer)) continue;
    const constant = constantOf(search, tried, bases, answer, null);
    if (Number.isNaN(constant)) continue;
    for (const pair of TOTAL_PAIRS) {
      if (Math.abs(pair.constant - constant) >= atConstant) continue;
      if ((isInFeet(length) && pair.unit !== "in") || !canBeBars(length, pair.unit)) continue;
      const kept = keptBy(search.rows, answer, factors, pair.constant, totalWithin);
      if (kept.share < SCORE.value.leastShare) continue;
      const dealt = dealtShare(search.rows, answer, factors, pair.constant, totalWithin);
      const odds = logOdds(kept.kept, kept.broken, chanceOf(dealt, totalChance));
      if (odds <= SCORE.value.lookElsewhere) continue;
      const worth = odds + unitLooks(length, pair.unit);
      fits.push({ answer, unit: pair.unit, totalUnit: pair.to, kept, worth });
    }
  }
  return fits;
}

function massFits(
  search: ProductSearch,
  tried: TriedRows,
  bases: Float64Array,
  length: ValueColumn,
  count: CountCandidate,
): MassFit[] {
  const fits: MassFit[] = [];
  for (const size of search.sizes) {
    if (size.column === length || shares(count.columns, size.column)) continue;
    for (const { table, factor } of size.tables) {
      for (const answer of search.answers) {
        if (isTaken(answer, length, count) || answer === size.column) continue;
        if (answer.bySize.includes(size.column)) continue;
        const constant = constantOf(search, tried, bases, answer, factor);
        if (Number.isNaN(constant)) continue;
        const found = { answer, size, table, constant, factors: [count, length, factor] };
        fits.push(...massFitsAt(search, length, found));
      }
    }
  }
  return fits;
}

interface MassConstant {
  readonly answer: ValueColumn;
  readonly size: SizeCandidate;
  readonly table: MassTable;
  readonly constant: number;
  readonly factors: readonly Factor[];
}

function massFitsAt(search: ProductSearch, length: ValueColumn, found: MassConstant): MassFit[] {
  const p = PRODUCT.value;
  const { answer, size, table, factors } = found;
  const fits: MassFit[] = [];
  for (const pair of MASS_PAIRS) {
    if ((isInFeet(length) && pair.unit !== "in") || !canBeBars(length, pair.unit)) continue;
    for (const { waste, log } of WASTES) {
      const constant = pair.constant + log;
      if (Math.abs(constant - found.constant) > (waste > 0 ? p.atWaste : p.atConstant)) continue;
      const kept = keptBy(search.rows, answer, factors, constant, p.massWithin);
      if (kept.share < SCORE.value.leastShare) continue;
      const dealt = dealtShare(search.rows, answer, factors, constant, p.massWithin);
      const odds = logOdds(kept.kept, kept.broken, chanceOf(dealt, p.massChance));
      if (odds <= SCORE.value.lookElsewhere) continue;
      const worth =
        odds +
        unitLooks(length, pair.unit) -
        (waste > 0 ? p.wasteCost : 0) -
        (size.tables[0]?.table === table ? 0 : p.otherTable) +
        p.sizeWorth * Math.min(p.mostSizeWorth, size.worth);
      fits.push({ answer, unit: pair.unit, massUnit: pair.to, size, table, waste, kept, worth });
    }
  }
  return fits;
}

function combined(
  length: ValueColumn,
  count: CountCandidate,
  totals: readonly TotalFit[],
  masses: readonly MassFit[],
): Product[] {
  const [only, second] = count.columns;
  const looks = only === undefined || second !== undefined ? 0 : countLooks(only, length);
  const found: Product[] = [];
  for (const total of totals.length > 0 ? totals : [null]) {
    for (const mass of [...masses, null]) {
      const unit = total?.unit ?? mass?.unit;
      if (unit === undefined) continue;
      if (total !== null && mass !== null && (total.unit !== mass.unit || total.answer === mass.answer))
        continue;
      const worth = (total?.worth ?? 0) + (mass?.worth ?? 0) + count.worth + looks;
      found.push({ length, count, unit, total, mass, worth });
    }
  }
  return found;
}

function isTaken(answer: ValueColumn, length: ValueColumn, count: CountCandidate): boolean {
  return (
    answer === length ||
    shares(count.columns, answer) ||
    length.places.includes(answer.column) ||
    answer.bySize.some(({ column }) => length.places.includes(column))
  );
}

function shares(columns: readonly ValueColumn[], one: ValueColumn): boolean {
  return columns.some((column) => one.places.includes(column.column));
}

function isSmallWhole(column: ValueColumn): boolean {
  return column.wholeShare > COLUMN_WHOLE;
}

const COLUMN_WHOLE = CANDIDATE.value.numberWhole;
