import type { BarFacts } from "./bar-facts";
import { IDENTITIES } from "./identities.data";
import type { IdentityHabits, RowIdentity } from "./identity-habits";

/** What a bar's row gives as amounts. */
export type AmountField = "members" | "each" | "total" | "length" | "totalLength" | "mass" | "size";

/** A row that breaks what most rows of its sheet keep. */
export interface BrokenRow {
  readonly broken: readonly RowIdentity[];
  /** the likeliest cell first; several where they are as likely */
  readonly suspects: readonly AmountField[];
  /** what the likeliest cell would have to hold, mm or kg; null where that cannot be told */
  readonly expected: number | null;
}

const NAMES: readonly RowIdentity[] = ["members", "totalLength", "mass", "massOfTotal"];
const MM_PER_METRE = 1000;
/** a thousandth of a mm or kg: beyond it is noise of the float */
const DECIMALS = 1000;

/** Which products most of the rows keep, whichever they are. */
export function identityHabits(bars: readonly BarFacts[]): IdentityHabits {
  const perMetre = ownMasses(bars);
  const shares = new Map(NAMES.map((name) => [name, { kept: 0, tested: 0 }]));
  const breaking: number[] = [];
  bars.forEach((facts, place) => {
    let isBroken = false;
    for (const [name, share] of shares) {
      const holds = isKept(name, facts, perMetre);
      if (holds === null) continue;
      share.tested += 1;
      if (holds) share.kept += 1;
      else isBroken = true;
    }
    if (isBroken) breaking.push(place);
  });
  const { share: least, rows } = IDENTITIES.value;
  const speaking = NAMES.filter((name) => {
    const { kept = 0, tested = 0 } = shares.get(name) ?? {};
    return kept >= rows && kept >= least * tested;
  });
  return { shares, speaking: new Set(speaking), breaking, perMetre };
}

/** What the row breaks of the products that most rows of its sheet keep; null where it keeps them all. */
export function brokenBy(facts: BarFacts): BrokenRow | null {
  const { speaking, perMetre } = facts.sheet.habits.identities;
  const broken: RowIdentity[] = [];
  for (const name of speaking) if (isKept(name, facts, perMetre) === false) broken.push(name);
  if (broken.length === 0) return null;
  const votes = new Map<AmountField, number>();
  for (const name of speaking) {
    const holds = isKept(name, facts, perMetre);
    if (holds === null) continue;
    for (const field of fieldsOf(name, facts)) votes.set(field, (votes.get(field) ?? 0) + (holds ? -1 : 1));
  }
  const ofLength = votes.get("length");
  if (ofLength !== undefined && facts.lengthJudgement.kind === "fits") votes.set("length", ofLength - 1);
  const most = Math.max(...votes.values());
  const suspects = [...votes].filter(([, one]) => one === most).map(([field]) => field);
  return { broken, suspects, expected: expectedOf(facts, suspects) };
}

/** kg/m of the row's size: the sheet's own where several rows of it agree, else the standard's. */
export function perMetreOf(facts: BarFacts): number | null {
  return massPerMetre(facts, facts.sheet.habits.identities.perMetre);
}

function massPerMetre({ bar, diameter }: BarFacts, own: ReadonlyMap<number, number>): number | null {
  return bar === null ? null : (own.get(diameter ?? 0) ?? bar.massPerMetre);
}

/** True or false, null where the row cannot be tested. */
function isKept(name: RowIdentity, facts: BarFacts, perMetre: ReadonlyMap<number, number>): boolean | null {
  const { row, count } = facts;
  if (name === "members") {
    const { members, each, total } = row;
    return members === null || each === null || total === null ? null : total === members * each;
  }
  if (name === "massOfTotal") return keepsMass(facts, row.totalLength ?? null, perMetre);
  const product = row.length === null || count === null ? null : row.length * count;
  return name === "mass" ? keepsMass(facts, product, perMetre) : keepsTotal(facts, product);
}

function keepsMass(
  facts: BarFacts,
  millimetres: number | null,
  own: ReadonlyMap<number, number>,
): boolean | null {
  const { mass } = facts.row;
  if (mass === null || !(mass > 0) || millimetres === null || !(millimetres > 0)) return null;
  const perMetre = massPerMetre(facts, own);
  if (perMetre === null) return null;
  const expected = (millimetres / MM_PER_METRE) * perMetre;
  const { massWithin, half } = IDENTITIES.value;
  const off = Math.abs(mass - expected) - massWithin * expected;
  return off <= 0 || off <= half * lastPlace(facts, "mass");
}

function keepsTotal(facts: BarFacts, product: number | null): boolean | null {
  const { totalLength = null } = facts.row;
  if (product === null || !(product > 0) || totalLength === null) return null;
  const { lengthWithin, half } = IDENTITIES.value;
  const off = Math.abs(totalLength - product);
  if (off <= lengthWithin * product) return true;
  // a whole number of metres is no rounded one
  const ofLength = Number.isInteger(facts.typed("length")) ? 0 : lastPlace(facts, "length");
  return off <= half * (lastPlace(facts, "totalLength") + ofLength * (facts.count ?? 0));
}

/** Where a total stands the products are of it. */
function fieldsOf(name: RowIdentity, { row }: BarFacts): readonly AmountField[] {
  if (name === "members") return ["members", "each", "total"];
  if (name === "massOfTotal") return ["totalLength", "size", "mass"];
  const counts: readonly AmountField[] = row.total !== null ? ["total"] : ["members", "each"];
  return name === "mass" ? [...counts, "length", "size", "mass"] : [...counts, "length", "totalLength"];
}

/** mm or kg in one of the last place that the cell shows. */
function lastPlace(facts: BarFacts, field: "mass" | "length" | "totalLength"): number {
  const decimals = /[.,](\d+)\s*\D*$/.exec(String(facts.typed(field)))?.[1]?.length ?? 0;
  return facts.inMillimetres(field, 10 ** -decimals);
}

/** The value of the one suspect with which the products of the row would hold. */
function expectedOf(facts: BarFacts, [suspect, another]: readonly AmountField[]): number | null {
  if (suspect === undefined || another !== undefined) return null;
  const { row } = facts;
  const given = (value: number | null | undefined): number => value ?? Number.NaN;
  const [members, each, total] = [given(row.members), given(row.each), given(row.total)];
  const [length, whole, count] = [given(row.length), given(row.totalLength), given(facts.count)];
  const open: Record<AmountField, readonly number[]> = {
    members: [total / each],
    each: [total / members],
    total: [members * each, whole / length],
    length: [whole / count],
    totalLength: [count * length],
    mass: [((count * length) / MM_PER_METRE) * given(perMetreOf(facts))],
    size: [],
  };
  const found = open[suspect].find((value) => value > 0 && Number.isFinite(value));
  if (found === undefined) return null;
  if (suspect !== "members" && suspect !== "each" && suspect !== "total")
    return Math.round(found * DECIMALS) / DECIMALS;
  const bars = Math.round(found);
  return Math.abs(bars - found) > bars * IDENTITIES.value.lengthWithin ? null : bars;
}

/** kg/m that the sheet itself uses for each diameter: the middle of its rows, near the table's. */
function ownMasses(bars: readonly BarFacts[]): ReadonlyMap<number, number> {
  const { sizeRows, fromTable } = IDENTITIES.value;
  const byDiameter = new Map<number, { table: number; found: number[] }>();
  for (const { bar, diameter, row, count } of bars) {
    const metres = ((row.length ?? 0) * (count ?? 0)) / MM_PER_METRE;
    if (bar === null || diameter === null || row.mass === null || !(metres > 0) || !(row.mass > 0)) continue;
    let own = byDiameter.get(diameter);
    if (own === undefined) {
      own = { table: bar.massPerMetre, found: [] };
      byDiameter.set(diameter, own);
    }
    own.found.push(row.mass / metres);
  }
  const masses = new Map<number, number>();
  for (const [diameter, { table, found }] of byDiameter) {
    found.sort((one, other) => one - other);
    const middle = found[found.length >> 1] ?? table;
    const isNear = Math.abs(Math.log(middle / table)) < fromTable;
    if (found.length >= sizeRows && isNear) masses.set(diameter, middle);
  }
  return masses;
}
