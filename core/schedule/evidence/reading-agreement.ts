import { sizeCandidates } from "./candidates";
import {
  CANDIDATE,
  KILOGRAMS,
  type LengthName,
  type MassName,
  METRES,
  PRODUCT,
  REST,
  WEIGH,
} from "./evidence.data";
import { legAgreement } from "./legs";
import { type Factor, keptBy } from "./log-odds";
import { isInFeet } from "./magnitude";
import type { MassTable } from "./mass-tables";
import type { IdentityName } from "./table-evidence";
import { feetBesideInches, groupedBySize, type ValueColumn } from "./value-column";
import type { EvidenceRole, EvidenceUnit } from "./word-reading";

/** What one column is taken for. */
export interface TakenColumn {
  readonly column: number;
  readonly role: EvidenceRole;
  readonly unit: EvidenceUnit | "kg/m" | "lb/ft" | null;
  readonly inches?: number;
  readonly size?: number;
}

/** How many rows keep an identity under a given reading. */
export interface Agreement {
  readonly identity: IdentityName;
  readonly kept: number;
  readonly tested: number;
  /** kept of the bars that differ: a bar that came before counts a quarter */
  readonly share: number;
  readonly bars: number;
  readonly columns: readonly number[];
  /** by place among the rows looked at */
  readonly brokenRows: readonly number[];
  /** the rows agree only where each member's bars are taken times a whole number that a heading may give */
  readonly byHeading: boolean;
}

/** A reading, whoever made it, tested on the rows of its table. */
export function readingAgreement(
  columns: readonly ValueColumn[],
  taken: Iterable<TakenColumn>,
  tables: readonly MassTable[],
  rows: readonly number[],
): Agreement[] {
  const reading = new Reading(columns, taken, tables, rows);
  return [...reading.counts(), ...reading.products(), ...reading.masses(), ...reading.legs()];
}

class Reading {
  private readonly at = new Map<EvidenceRole, { column: ValueColumn; taken: TakenColumn }>();
  private readonly legColumns: ValueColumn[] = [];
  private legUnit: LengthName | null = null;
  private readonly group: ValueColumn | null;
  private readonly groupUnit: TakenColumn["unit"] = null;
  private readonly length: ValueColumn | null;
  private readonly size: Sized | null;

  constructor(
    columns: readonly ValueColumn[],
    taken: Iterable<TakenColumn>,
    tables: readonly MassTable[],
    private readonly rows: readonly number[],
  ) {
    const grouped: ValueColumn[] = [];
    const heads: number[] = [];
    for (const one of taken) {
      const column = columns.find((other) => other.column === one.column);
      if (column === undefined) continue;
      if (one.role === "leg") {
        this.legColumns.push(column);
        this.legUnit ??= (one.unit ?? null) as LengthName | null;
      } else if (one.role === "bySize") {
        grouped.push(column);
        heads.push(one.size ?? Number.NaN);
        this.groupUnit ??= one.unit;
      } else if (!this.at.has(one.role)) this.at.set(one.role, { column, taken: one });
    }
    this.group = grouped.length > 1 ? groupedBySize(grouped) : null;
    this.length = this.lengthColumn(columns);
    const size = this.at.get("size");
    this.size = size === undefined ? this.sizeOfHeads(heads, tables) : sizeIn(size.column, tables);
  }

  /** No column holds the sizes: each row is of the size that heads the column which it fills. */
  private sizeOfHeads(heads: readonly number[], tables: readonly MassTable[]): Sized | null {
    const { group } = this;
    if (group === null || heads.some(Number.isNaN)) return null;
    return { places: [], factors: tables.map((table) => massesUnder(group, heads, table)) };
  }

  private lengthColumn(columns: readonly ValueColumn[]): ValueColumn | null {
    const found = this.at.get("length");
    if (found === undefined) return null;
    const inches = columns.find(({ column }) => column === found.taken.inches);
    if (inches === undefined) return found.column;
    return feetBesideInches(found.column, inches, CANDIDATE.value.inchesPerFoot, CANDIDATE.value.inchHalf);
  }

  /** Metres in one of the length's unit. */
  private metres(role: EvidenceRole, column: ValueColumn): number | null {
    if (isInFeet(column)) return METRES.value.in;
    const unit = this.at.get(role)?.taken.unit;
    return unit !== null && unit !== undefined && unit in METRES.value
      ? METRES.value[unit as LengthName]
      : null;
  }

  counts(): Agreement[] {
    const [members, each, total] = (["members", "each", "total"] as const).map(
      (role) => this.at.get(role)?.column,
    );
    if (members === undefined || each === undefined || total === undefined) return [];
    const kept = keptBy(this.rows, total, [members, each], 0, PRODUCT.value.oneUnit);
    const columns = [members.column, each.column, total.column];
    return [this.agreement("members", kept, total, columns)];
  }

  /** Total length, lengths or masses by size, and mass; each with the count that the reading gives. */
  products(): Agreement[] {
    const { length } = this;
    const metres = length === null ? null : this.metres("length", length);
    const count = this.count();
    if (count === null) return this.massOfTotal();
    if (length === null || metres === null) return [];
    const factors = [count.factor, length];
    const bars = [...count.columns, ...length.places];
    const found: Agreement[] = [];
    const total = this.at.get("totalLength");
    if (total !== undefined) {
      const per = this.metres("totalLength", total.column) ?? 1;
      found.push(
        this.product("totalLength", total.column, factors, Math.log(metres / per), bars, count.isOpen),
      );
    }
    const mass = this.at.get("mass");
    if (mass !== undefined) {
      const per = KILOGRAMS.value[(mass.taken.unit ?? "kg") as MassName] ?? 1;
      const best = this.massAgreement(mass.column, factors, Math.log(metres / per), bars, count.isOpen);
      if (best !== null) found.push(best);
    }
    if (this.group !== null) found.push(...this.bySize(this.group, factors, metres, bars, count.isOpen));
    return found;
  }

  /** No column counts the bars: the masses may still be those of the total lengths. */
  private massOfTotal(): Agreement[] {
    const [total, mass] = [this.at.get("totalLength"), this.at.get("mass")];
    const metres = total === undefined ? null : this.metres("totalLength", total.column);
    if (total === undefined || mass === undefined || metres === null) return [];
    const per = KILOGRAMS.value[(mass.taken.unit ?? "kg") as MassName] ?? 1;
    const columns = total.column.places;
    const found = this.massAgreement(mass.column, [total.column], Math.log(metres / per), columns, false);
    return found === null ? [] : [found];
  }

  private count(): { factor: Factor; columns: readonly number[]; isOpen: boolean } | null {
    const [members, each, total] = (["members", "each", "total"] as const).map(
      (role) => this.at.get(role)?.column,
    );
    if (total !== undefined) {
      return { factor: total, columns: [total.column], isOpen: members === undefined && each === undefined };
    }
    if (each === undefined) return null;
    if (members === undefined) return { factor: each, columns: [each.column], isOpen: true };
    const logs = each.logs.map((log, row) => log + (members.logs[row] as number));
    const ids = each.ids.map((id, row) => id * each.rowCount + (members.ids[row] as number));
    return { factor: { logs, ids }, columns: [members.column, each.column], isOpen: false };
  }

  private bySize(
    group: ValueColumn,
    factors: readonly Factor[],
    metres: number,
    bars: readonly number[],
    isOpen: boolean,
  ): Agreement[] {
    const isMass = this.groupUnit !== null && this.groupUnit in KILOGRAMS.value;
    const asLengths = LENGTH_NAMES.map((unit) =>
      this.product("bySize", group, factors, Math.log(metres / METRES.value[unit]), bars, isOpen),
    );
    const asMasses = MASS_NAMES.map((unit) =>
      this.massAgreement(group, factors, Math.log(metres / KILOGRAMS.value[unit]), bars, isOpen),
    )
      .filter((one): one is Agreement => one !== null)
      .map((one) => ({ ...one, identity: "bySize" as const }));
    const best = better(isMass ? asMasses : [...asLengths, ...asMasses]);
    return best === null ? [] : [best];
  }

  private massAgreement(
    answer: ValueColumn,
    factors: readonly Factor[],
    constant: number,
    bars: readonly number[],
    isOpen: boolean,
  ): Agreement | null {
    const { size } = this;
    if (size === null) return null;
    const columns = [...bars, ...size.places];
    const plain: Agreement[] = [];
    const ofMembers: Agreement[] = [];
    for (const waste of WASTE_LOGS) {
      for (const factor of size.factors) {
        const one = this.product("mass", answer, [...factors, factor], constant + waste, columns, isOpen);
        if (!one.byHeading && one.share >= WEIGH.value.confirms) return one;
        (one.byHeading ? ofMembers : plain).push(one);
      }
    }
    // sizes of another table are whole times as heavy now and then: 10 x a bar of 6 mm is a #6
    const [best, carried] = [better(plain), better(ofMembers)];
    return carried === null || (best !== null && best.kept >= carried.kept) ? best : carried;
  }

  private product(
    identity: IdentityName,
    answer: ValueColumn,
    factors: readonly Factor[],
    constant: number,
    bars: readonly number[],
    isOpen: boolean,
  ): Agreement {
    const within = identity === "mass" ? PRODUCT.value.massWithin : PRODUCT.value.totalWithin;
    const columns = [...bars, ...answer.places];
    const plain = this.agreement(
      identity,
      keptBy(this.rows, answer, factors, constant, within),
      answer,
      columns,
    );
    if (!isOpen || plain.share >= WEIGH.value.confirms) return plain;
    const carried = membersCarried(this.rows, answer, factors, constant, within);
    if (carried === null) return plain;
    const kept = keptBy(this.rows, answer, [...factors, carried], constant, within);
    return { ...this.agreement(identity, kept, answer, columns), byHeading: true };
  }

  masses(): Agreement[] {
    return [...this.unitMass(), ...this.pieceMass()];
  }

  /** What one bar weighs: its length and size, and no count. */
  private pieceMass(): Agreement[] {
    const { length, size } = this;
    const found = this.at.get("pieceMass");
    const metres = length === null ? null : this.metres("length", length);
    if (found === undefined || length === null || size === null || metres === null) return [];
    const per = KILOGRAMS.value[(found.taken.unit ?? "kg") as MassName] ?? 1;
    const columns = [...length.places, ...size.places, found.column.column];
    const tried = size.factors.map((factor) => {
      const constant = Math.log(metres / per);
      const kept = keptBy(this.rows, found.column, [length, factor], constant, PRODUCT.value.massWithin);
      return this.agreement("pieceMass", kept, found.column, columns);
    });
    const best = better(tried);
    return best === null ? [] : [best];
  }

  private unitMass(): Agreement[] {
    const found = this.at.get("unitMass");
    if (found === undefined || this.size === null) return [];
    const tried = this.size.factors.map((factor) => {
      const kept = keptBy(this.rows, found.column, [factor], 0, REST.value.unitMassWithin);
      return this.agreement("unitMass", kept, found.column, [found.column.column]);
    });
    const best = better(tried);
    return best === null ? [] : [best];
  }

  legs(): Agreement[] {
    const { length, legColumns } = this;
    if (length === null || legColumns.length === 0) return [];
    const per = this.metres("length", length);
    const ratio = per === null || this.legUnit === null ? 1 : METRES.value[this.legUnit] / per;
    const { kept, tested, share, bars, brokenRows } = legAgreement(length, legColumns, ratio, this.rows);
    if (tested === 0) return [];
    const columns = [...length.places, ...legColumns.map(({ column }) => column)];
    return [{ identity: "legs", kept, tested, share, bars, columns, brokenRows, byHeading: false }];
  }

  private agreement(
    identity: IdentityName,
    kept: ReturnType<typeof keptBy>,
    answer: ValueColumn,
    columns: readonly number[],
  ): Agreement {
    const { brokenRows } = kept;
    const tested = kept.testedRows;
    return {
      identity,
      kept: tested - brokenRows.length,
      tested,
      share: kept.share,
      bars: kept.kept + kept.broken,
      columns: [...new Set([...columns, ...answer.places])],
      brokenRows,
      byHeading: false,
    };
  }
}

const LENGTH_NAMES = Object.keys(METRES.value) as LengthName[];
const MASS_NAMES = Object.keys(KILOGRAMS.value) as MassName[];
const PER_CENT = 100;
const WASTE_LOGS = PRODUCT.value.wastes.map((waste) => Math.log(1 + waste / PER_CENT));

/** Where the sizes stand, and kg/m of each row by each table. */
interface Sized {
  readonly places: readonly number[];
  readonly factors: readonly Factor[];
}

function sizeIn(column: ValueColumn, tables: readonly MassTable[]): Sized | null {
  const [found] = sizeCandidates([column], tables, null);
  return found === undefined
    ? null
    : { places: [column.column], factors: found.tables.map(({ factor }) => factor) };
}

function massesUnder(group: ValueColumn, heads: readonly number[], { masses }: MassTable): Factor {
  const logs = group.logs.map((_, row) => {
    const mass = masses.get(heads[group.which?.[row] ?? -1] ?? Number.NaN);
    return mass === undefined ? Number.NaN : Math.log(mass);
  });
  return { logs, ids: Int32Array.from(group.which ?? []) };
}

function better(agreements: readonly Agreement[]): Agreement | null {
  let best: Agreement | null = null;
  for (const one of agreements) if (best === null || one.share > best.share) best = one;
  return best;
}

/** Members that stand in a heading: a whole factor that stays the same over stretches of rows. */
function membersCarried(
  rows: readonly number[],
  answer: ValueColumn,
  factors: readonly Factor[],
  constant: number,
  within: number,
): Factor | null {
  const logs = new Float64Array(answer.rowCount).fill(Number.NaN);
  const ids = new Int32Array(answer.rowCount);
  const seen = new Set<number>();
  let [same, pairs, before] = [0, 0, Number.NaN];
  for (const row of rows) {
    let off = (answer.logs[row] as number) - constant;
    for (const factor of factors) off -= factor.logs[row] as number;
    const members = Math.round(Math.exp(off));
    const isWhole =
      members >= 1 &&
      Math.abs(off - Math.log(members)) <= within + answer.half / (answer.values[row] as number);
    if (Number.isNaN(off)) continue;
    if (!Number.isNaN(before)) {
      pairs += 1;
      if (isWhole && members === before) same += 1;
    }
    before = isWhole ? members : Number.NaN;
    logs[row] = isWhole ? Math.log(members) : 0;
    ids[row] = isWhole ? members : 0;
    if (isWhole) seen.add(members);
  }
  const { headingShare, headingRows, mostMembers } = REST.value;
  // one factor throughout is another unit
  const isVaried = seen.size > 1 && Math.max(...seen) <= mostMembers;
  return isVaried && pairs > headingRows && same >= headingShare * pairs ? { logs, ids } : null;
}
