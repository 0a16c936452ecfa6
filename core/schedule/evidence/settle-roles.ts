import type { BarReading } from "./bar-readings";
import { type SizeCandidate, wordWorth } from "./candidates";
import { LEGS, REST, TRIPLE } from "./evidence.data";
import { tellsPattern } from "./legs";
import { logOdds } from "./log-odds";
import { type RunFit, runAndSpacing } from "./run-and-spacing";
import type { Triple } from "./triples";
import type { UnitMassFit } from "./unit-mass";
import type { ValueColumn } from "./value-column";
import type { EvidenceRole, EvidenceUnit, Words } from "./word-reading";

export interface SettledRole {
  readonly role: EvidenceRole;
  readonly unit: EvidenceUnit | "kg/m" | "lb/ft" | null;
}

/** What all columns of a table are under its best reading. */
export interface SettledRoles {
  readonly roles: ReadonlyMap<number, SettledRole>;
  readonly size: SizeCandidate | null;
  readonly triple: Triple | null;
  readonly run: RunFit | null;
  readonly unitMass: UnitMassFit | null;
  /** members stand in headings: total over each stays the same over stretches of rows */
  readonly membersInHeading: boolean;
  /** the count rests on nothing but its looks */
  readonly countByLooks: boolean;
}

/** What is known of a table when its roles are settled. */
export interface Settling {
  readonly columns: readonly ValueColumn[];
  readonly numbers: readonly ValueColumn[];
  readonly counts: readonly ValueColumn[];
  readonly groups: readonly ValueColumn[];
  readonly sizes: readonly SizeCandidate[];
  readonly triples: readonly Triple[];
  readonly unitMasses: readonly UnitMassFit[];
  readonly rows: readonly number[];
  readonly words: Words | null;
}

/** Gives every column its role under the best reading; the first claim to a column stands. */
export function settleRoles(
  best: BarReading,
  readings: readonly BarReading[],
  table: Settling,
): SettledRoles {
  const roles = new Roles();
  const { length, unit } = best;
  roles.claim(length, "length", length.isFeetBesideInches ? "ft" : unit);
  const size = sizeOf(best, table);
  if (size !== null) roles.claim(size.column, "size", null);
  claimProducts(best, roles);
  for (const other of readings) {
    if (other.length === length && other.unit === unit && other.count === best.count) {
      claimProducts(other, roles, REST.value.otherIdentity);
    }
  }
  const unitMass = table.unitMasses.find(
    ({ size: of, answer }) => size !== null && of.column === size.column && !roles.has(answer),
  );
  if (unitMass !== undefined) roles.claim(unitMass.answer, "unitMass", unitMass.unit);
  const triple = settledTriple(best, table, roles);
  claimCounts(best, triple, table, roles);
  const legUnit = best.legs?.legUnit ?? unit;
  for (const leg of best.legs?.columns ?? []) roles.claim(leg, "leg", legUnit);
  const membersInHeading = triple === null && claimEach(best, table, roles);
  const run = claimRun(best, triple, table, roles);
  const countByLooks = claimRest(best, table, roles);
  return { roles: roles.map, size, triple, run, unitMass: unitMass ?? null, membersInHeading, countByLooks };
}

class Roles {
  readonly map = new Map<number, SettledRole>();

  claim(column: ValueColumn, role: EvidenceRole, unit: SettledRole["unit"]): void {
    for (const place of column.places) if (!this.map.has(place)) this.map.set(place, { role, unit });
  }

  has({ column }: ValueColumn): boolean {
    return this.map.has(column);
  }

  is({ column }: ValueColumn, role: EvidenceRole): boolean {
    return this.map.get(column)?.role === role;
  }

  free({ column }: ValueColumn): void {
    this.map.delete(column);
  }
}

function claimProducts(
  { total, mass, count }: BarReading,
  roles: Roles,
  above = Number.NEGATIVE_INFINITY,
): void {
  if (total !== null && total.worth > above) {
    const own = count.columns.length > 0 ? "totalLength" : "length";
    roles.claim(total.answer, total.answer.bySize.length > 0 ? "bySize" : own, total.totalUnit);
  }
  if (mass !== null && mass.worth > above) {
    roles.claim(mass.answer, mass.answer.bySize.length > 0 ? "bySize" : "mass", mass.massUnit);
  }
}

function sizeOf(best: BarReading, table: Settling): SizeCandidate | null {
  if (best.mass !== null) return best.mass.size;
  const [first] = table.unitMasses;
  if (first !== undefined) return first.size;
  const taken = new Set<ValueColumn>([best.length, ...best.count.columns]);
  if (best.triple !== null)
    for (const column of [best.triple.total, ...best.triple.factors]) taken.add(column);
  const isLeg = (column: ValueColumn): boolean =>
    !column.isSize && (best.legs?.columns.includes(column) ?? false);
  let found: SizeCandidate | null = null;
  let most = Number.NEGATIVE_INFINITY;
  for (const size of table.sizes) {
    if (taken.has(size.column) || isLeg(size.column)) continue;
    const worth = size.worth + tellsColumn(size, table);
    if (worth <= most) continue;
    found = size;
    most = worth;
  }
  return found;
}

/** Columns by size: the size must tell which of them is filled. */
function tellsColumn({ column }: SizeCandidate, { groups, rows }: Settling): number {
  const r = REST.value;
  let worth = 0;
  for (const { which } of groups) {
    const bySize = new Map<number, Map<number, number>>();
    for (const row of rows) {
      const [place, size] = [which?.[row] ?? -1, column.values[row] as number];
      if (place < 0 || Number.isNaN(size)) continue;
      const places = bySize.get(size) ?? new Map<number, number>();
      bySize.set(size, places.set(place, (places.get(place) ?? 0) + 1));
    }
    let [usual, all] = [0, 0];
    for (const places of bySize.values()) {
      const counts = [...places.values()];
      const sum = counts.reduce((so, one) => so + one, 0);
      if (sum < 2) continue;
      usual += Math.max(...counts);
      all += sum;
    }
    if (all > r.sizeByColumnRows && bySize.size > 1)
      worth += r.sizeByColumn * (usual / all - r.sizeByColumnFrom);
  }
  return worth;
}

function settledTriple(best: BarReading, table: Settling, roles: Roles): Triple | null {
  const known = best.triple ?? ofOnes(best, table, roles);
  if (known !== null) return known;
  if (best.count.columns.length > 0 && best.by === "product") return null;
  const isFree = ({ total, factors }: Triple): boolean => ![total, ...factors].some((one) => roles.has(one));
  return table.triples.find(isFree) ?? null;
}

/** Members of one throughout: each equals total, and a column of ones stands beside them. */
function ofOnes({ count }: BarReading, { counts, rows }: Settling, roles: Roles): Triple | null {
  const [only, second] = count.columns;
  if (second !== undefined) return null;
  for (const one of only === undefined ? counts : [only]) {
    if (only === undefined && (roles.has(one) || one.distinct <= 2)) continue;
    const twin = counts.find(
      (column) =>
        column !== one &&
        !roles.has(column) &&
        (only !== undefined || column.column > one.column) &&
        rows.filter((row) => column.values[row] === one.values[row]).length > REST.value.twin * rows.length,
    );
    const ones = counts.find(
      (column) => column !== one && column !== twin && column.low === 1 && column.high === 1,
    );
    if (twin === undefined || ones === undefined) continue;
    const [each, total] = twin.column < one.column ? [twin, one] : [one, twin];
    const trivial = rows.length;
    return { total, factors: [ones, each], kept: 0, broken: 0, trivial, worth: 0, brokenRows: [] };
  }
  return null;
}

function claimCounts({ count }: BarReading, triple: Triple | null, { words }: Settling, roles: Roles): void {
  if (triple !== null) {
    roles.claim(triple.total, "total", null);
    claimFactors(...triple.factors, words, roles);
    return;
  }
  const [only, second] = count.columns;
  if (only !== undefined && second !== undefined) claimFactors(only, second, words, roles);
  else if (only !== undefined) roles.claim(only, "total", null);
}

/** Members before each: the one that stays the same over stretches of rows, else the left one; words first. */
function claimFactors(left: ValueColumn, right: ValueColumn, words: Words | null, roles: Roles): void {
  const named = (column: ValueColumn): boolean => words?.get(column.column)?.role === "members";
  const looksSwapped =
    stays(right) > stays(left) + REST.value.stays || right.middle * REST.value.timesLess < left.middle;
  const isSwapped = named(right) || (!named(left) && looksSwapped);
  const [members, each] = isSwapped ? [right, left] : [left, right];
  roles.claim(members, "members", null);
  roles.claim(each, "each", null);
}

function stays({ values }: ValueColumn): number {
  let [same, pairs] = [0, 0];
  for (let row = 1; row < values.length; row += 1) {
    if (!((values[row] as number) > 0) || !((values[row - 1] as number) > 0)) continue;
    pairs += 1;
    if (values[row] === values[row - 1]) same += 1;
  }
  return pairs === 0 ? 0 : same / pairs;
}

/** Bars of one member where the members stand in a heading row. */
function claimEach({ count }: BarReading, { counts }: Settling, roles: Roles): boolean {
  const [only, second] = count.columns;
  if (only === undefined || second !== undefined) return false;
  const r = REST.value;
  let found: ValueColumn | null = null;
  let most = r.headingWorth;
  for (const each of counts) {
    if (roles.has(each) || each === only || each.distinct <= 2) continue;
    const { same, of } = steadyRatio(only, each);
    const worth = logOdds(same, of - same, r.headingChance);
    if (of <= r.headingRows || same < r.headingShare * of || worth <= most) continue;
    found = each;
    most = worth;
  }
  if (found === null) return false;
  roles.claim(found, "each", null);
  return true;
}

function steadyRatio(total: ValueColumn, each: ValueColumn): { same: number; of: number } {
  let [same, of, before] = [0, 0, Number.NaN];
  for (let row = 0; row < total.rowCount; row += 1) {
    const ratio = (total.values[row] as number) / (each.values[row] as number);
    const isWhole =
      Number.isFinite(ratio) && ratio >= 1 && Math.abs(ratio - Math.round(ratio)) < TRIPLE.value.exact;
    const now = isWhole ? Math.round(ratio) : Number.NaN;
    if (!Number.isNaN(before)) {
      of += 1;
      if (now === before) same += 1;
    }
    before = now;
  }
  return { same, of };
}

function claimRun(best: BarReading, triple: Triple | null, table: Settling, roles: Roles): RunFit | null {
  const counts =
    triple === null ? best.count.columns.slice(0, 1) : [triple.factors[1], triple.factors[0], triple.total];
  const [surest] = table.triples;
  const counting = new Set(
    surest !== undefined && surest.worth > TRIPLE.value.sure ? [surest.total, ...surest.factors] : [],
  );
  const grouped = new Set(table.groups.flatMap(({ bySize }) => bySize));
  const open = table.numbers.filter(
    (column) =>
      !counting.has(column) &&
      !grouped.has(column) &&
      column.runningShare <= 1 / 2 &&
      (!roles.has(column) || roles.is(column, "leg")),
  );
  const fit = runAndSpacing(counts, open, table.triples);
  if (fit === null) return null;
  for (const column of [fit.run, fit.spacing]) if (roles.is(column, "leg")) roles.free(column);
  roles.claim(fit.run, "run", best.unit);
  roles.claim(fit.spacing, "spacing", best.unit);
  return fit;
}

function claimRest(best: BarReading, table: Settling, roles: Roles): boolean {
  const r = REST.value;
  const free = (): ValueColumn[] => table.columns.filter((column) => !roles.has(column));
  claimShape(best, table, free(), roles);
  for (const column of free()) {
    if (column.runningShare <= r.running || column.rowCount <= r.serialRows) continue;
    roles.claim(column, free().some((other) => isLabelBeside(column, other)) ? "serial" : "mark", null);
  }
  const countByLooks = claimCountByLooks(best, table, free(), roles);
  if (![...roles.map.values()].some(({ role }) => role === "mark")) claimMark(free(), roles);
  for (const column of free()) roles.claim(column, "other", null);
  return countByLooks;
}

function claimShape(best: BarReading, { rows }: Settling, free: readonly ValueColumn[], roles: Roles): void {
  const legs = best.legs?.columns ?? [];
  if (legs.length < 2) return;
  const r = LEGS.value;
  let found: ValueColumn | null = null;
  let most = r.shapeTells;
  for (const column of free) {
    const tells = tellsPattern(column, legs, rows, r.leastPattern);
    const isFew = !column.isNumber || column.distinct <= r.shapeDistinct;
    if (tells <= most || column.filledShare <= r.shapeFilled || !isFew) continue;
    found = column;
    most = tells;
  }
  if (found !== null) roles.claim(found, "shape", null);
}

function isLabelBeside(column: ValueColumn, other: ValueColumn): boolean {
  const r = REST.value;
  return (
    other !== column &&
    other.filledShare > r.labelFilled &&
    (other.isText || other.isSize || other.wholeShare === 1) &&
    other.column > column.column &&
    other.column <= column.column + r.labelNear &&
    other.runningShare > 1 / 2
  );
}

function claimCountByLooks(
  best: BarReading,
  { words, sizes }: Settling,
  free: readonly ValueColumn[],
  roles: Roles,
): boolean {
  const r = REST.value;
  if ([...roles.map.values()].some(({ role }) => role === "total" || role === "each")) return false;
  const isSized = new Set(sizes.map(({ column }) => column));
  let found: ValueColumn | null = null;
  let most = Number.NEGATIVE_INFINITY;
  for (const column of free) {
    const isCount =
      column.isNumber &&
      column.wholeShare > r.lookWhole &&
      column.filledShare > r.countFilled &&
      column.middle >= 1 &&
      column.middle < r.mostCount &&
      column.runningShare < 1 / 2 &&
      column.distinct > 1;
    if (!isCount) continue;
    const isNamed = ["total", "each"].some(
      (role) => wordWorth(words, column.column, role as EvidenceRole) > 0,
    );
    const worth =
      (isSized.has(column) && column.distinct < r.countDistinct * 2 ? r.likeSize : 0) +
      Math.min(r.countDistinctWorth, column.distinct / r.countDistinct) +
      r.perDistance * Math.abs(column.column - best.length.column) +
      (isNamed ? r.wordWorth : 0) +
      (column.counted > 0 ? r.wordWorth : 0);
    if (worth <= most) continue;
    found = column;
    most = worth;
  }
  if (found === null) return false;
  roles.claim(found, "total", null);
  return true;
}

function claimMark(free: readonly ValueColumn[], roles: Roles): void {
  const r = REST.value;
  let found: ValueColumn | null = null;
  let most = Number.NEGATIVE_INFINITY;
  for (const column of free) {
    const isLabel = column.isText || column.isSize || column.wholeShare > r.markWhole;
    const different = differentShare(column);
    const worth = different + r.perColumn * column.column;
    if (!isLabel || column.filledShare <= r.markFilled || different <= r.markDifferent || worth <= most)
      continue;
    found = column;
    most = worth;
  }
  if (found !== null) roles.claim(found, "mark", null);
}

function differentShare({ labels }: ValueColumn): number {
  const seen = new Set<number>();
  let filled = 0;
  for (const label of labels) {
    if (label < 0) continue;
    filled += 1;
    seen.add(label);
  }
  return filled === 0 ? 0 : seen.size / filled;
}
