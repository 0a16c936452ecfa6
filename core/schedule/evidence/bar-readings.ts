import { unitWorth, wordWorth } from "./candidates";
import { GUARD, LEGS, type LengthName, MAGNITUDE, REST, SCORE } from "./evidence.data";
import type { LegSet } from "./legs";
import { canBeBars, isInFeet, isSmall, unitLooks } from "./magnitude";
import type { Product } from "./products";
import type { Triple } from "./triples";
import type { ValueColumn } from "./value-column";
import type { Words } from "./word-reading";

/** One way to read a table: its length, its count and everything that supports the two. */
export interface BarReading extends Product {
  readonly legs: LegSet | null;
  readonly triple: Triple | null;
  /** `product`: a mass or total length; `legs`: a length by its legs; `looks`: nothing but its values */
  readonly by: "product" | "legs" | "looks";
  readonly score: number;
}

/** What readings are made of. */
export interface Parts {
  readonly products: readonly Product[];
  readonly legs: readonly LegSet[];
  readonly triples: readonly Triple[];
  readonly lengths: readonly ValueColumn[];
  readonly words: Words | null;
  readonly rowCount: number;
}

/** Every reading of a table, the best first. */
export function barReadings(parts: Parts): BarReading[] {
  const guarded = withGuards(parts.products, parts.legs);
  const readings = guarded.map((product) => supported(product, parts, "product"));
  for (const product of byLegs(parts)) readings.push(supported(product, parts, "legs"));
  if (readings.length === 0) readings.push(...byLooks(parts));
  return readings.sort((one, other) => other.score - one.score);
}

/** What is itself count x length is no length, a copy proves little, and a leg gives way to the length. */
function withGuards(products: readonly Product[], legs: readonly LegSet[]): Product[] {
  const g = GUARD.value;
  const totals = new Map<ValueColumn, number>();
  for (const { total, count } of products) {
    if (total === null || count.columns.length === 0 || total.answer.bySize.length > 0) continue;
    totals.set(total.answer, Math.max(totals.get(total.answer) ?? 0, total.worth));
  }
  return products.map((product) => {
    let { worth } = product;
    if (product.count.columns.length === 0) {
      if ((totals.get(product.length) ?? 0) > g.sureTotal) worth += g.isTotal - worth * g.isTotalShare;
      else if (product.total !== null) worth -= Math.max(0, product.total.worth - g.mostOfCopy);
    }
    for (const set of legs) if (givesWay(product.length, set, legs)) worth += LEGS.value.givesWay;
    return { ...product, worth };
  });
}

/** A leg equals the length in every row of one leg; straight bars throughout would make either the other's leg. */
function givesWay(column: ValueColumn, set: LegSet, legs: readonly LegSet[]): boolean {
  if (set.columns[0] !== column || set.ratio !== 1 || set.length === column) return false;
  const least = set.worth - LEGS.value.alikeWithin;
  return !legs.some(
    (other) =>
      other.length === column && other.columns[0] === set.length && other.ratio === 1 && other.worth >= least,
  );
}

function supported(product: Product, parts: Parts, by: BarReading["by"]): BarReading {
  const { count, length, total, mass, unit } = product;
  const used = new Set<ValueColumn | undefined>([
    ...count.columns,
    mass?.answer,
    mass?.size.column,
    total?.answer,
  ]);
  const legs =
    parts.legs.find(
      (set) =>
        set.length === length &&
        !set.columns.some((column) => used.has(column)) &&
        (set.unit === null || set.unit === unit),
    ) ?? null;
  const triple = tripleOf(product, parts.triples);
  const most = SCORE.value.mostSide;
  const score =
    product.worth +
    (legs === null ? 0 : Math.min(legs.worth, most)) +
    (triple === null ? 0 : Math.min(triple.worth, most)) +
    worded(product, parts.words);
  return { ...product, legs, triple, by, score };
}

function tripleOf({ count, length }: Product, triples: readonly Triple[]): Triple | null {
  const [only, second] = count.columns;
  if (only === undefined || second !== undefined) return null;
  return triples.find(({ total, factors }) => total === only && !factors.includes(length)) ?? null;
}

/** A header word is worth about one row of proof. */
function worded({ length, count, unit, total, mass }: Product, words: Words | null): number {
  if (words === null) return 0;
  const [only, second] = count.columns;
  let worth = wordWorth(words, length.column, "length") + unitWorth(words, length.column, unit);
  if (only !== undefined && second === undefined) {
    worth += Math.max(wordWorth(words, only.column, "total"), wordWorth(words, only.column, "each"));
  }
  if (mass !== null && mass.answer.bySize.length === 0) {
    worth +=
      wordWorth(words, mass.answer.column, "mass") + unitWorth(words, mass.answer.column, mass.massUnit);
  }
  if (total !== null && total.answer.bySize.length === 0) {
    const at = total.answer.column;
    worth += wordWorth(words, at, "totalLength") + unitWorth(words, at, total.totalUnit);
  }
  return worth;
}

const ANY: readonly LengthName[] = ["mm", "cm", "m", "ft", "in"];
const PLAIN: readonly LengthName[] = ["mm", "cm", "m"];

/** No product on the sheet: the length from its legs, the counts from members x each. */
function byLegs({ legs, triples, rowCount }: Parts): Product[] {
  const seen = new Set<ValueColumn>();
  const found: Product[] = [];
  for (const set of legs) {
    const { length } = set;
    if (seen.has(length)) continue;
    seen.add(length);
    const triple = triples.find(({ total, factors }) =>
      [total, ...factors].every((column) => column !== length && !set.columns.includes(column)),
    );
    const units = set.unit === null ? (isInFeet(length) ? (["in"] as const) : ANY) : [set.unit];
    for (const unit of units) {
      if (!canBeBars(length, unit)) continue;
      const isRare = unit === "ft" || unit === "cm" || (unit === "in" && length.feetInches === 0);
      const worth =
        unitLooks(length, unit) +
        (length.isFeetBesideInches ? MAGNITUDE.value.pair : 0) +
        (isRare ? MAGNITUDE.value.rareUnit : 0);
      found.push({ length, count: countOf(triple, rowCount), unit, total: null, mass: null, worth });
    }
  }
  return found;
}

function countOf(triple: Triple | undefined, rowCount: number): Product["count"] {
  if (triple === undefined) return noCount(rowCount);
  const { logs, ids } = triple.total;
  return { columns: [triple.total], logs, ids, worth: 0 };
}

function noCount(rowCount: number): Product["count"] {
  return { columns: [], logs: new Float64Array(rowCount), ids: new Int32Array(rowCount), worth: 0 };
}

/** Nothing confirms a length: the column that looks most like one. */
function byLooks({ lengths, words, rowCount }: Parts): BarReading[] {
  const r = REST.value;
  const found: BarReading[] = [];
  for (const length of lengths) {
    const isCount = length.wholeShare > r.lookWhole && length.middle < r.lookMiddle;
    if (isSmall(length) || (isCount && !length.isFeetBesideInches) || length.runningShare > 1 / 2) continue;
    for (const unit of isInFeet(length) ? (["in"] as const) : PLAIN) {
      const looks = unitLooks(length, unit);
      if (looks < r.lookMagnitude) continue;
      const score =
        looks +
        (length.distinct / rowCount) * r.lookDistinct +
        (unit === "mm" ? r.lookMillimetre : 0) +
        (unit === "mm" && length.wholeShare < r.lookMillimetreWhole ? r.lookMillimetreBroken : 0) +
        wordWorth(words, length.column, "length") +
        unitWorth(words, length.column, unit);
      const product = { length, count: noCount(rowCount), unit, total: null, mass: null, worth: 0 };
      found.push({ ...product, legs: null, triple: null, by: "looks", score });
    }
  }
  return found;
}
