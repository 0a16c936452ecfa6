import { massPerMetreOf } from "../schedule/cells/size-elsewhere";
import type { AnswersOfBars } from "./answers-of-bars";
import type { BarFacts } from "./bar-facts";
import { IDENTITIES, LONGEST_ROLLED } from "./identities.data";
import {
  type AmountField,
  type BrokenRow,
  type IdentityHabits,
  type RowIdentity,
  samePerMetre,
  sameSpeaking,
} from "./identity-habits";
import type { Answered } from "./kept-answers";

const NAMES: readonly RowIdentity[] = ["members", "totalLength", "mass", "massOfTotal", "pieceMass"];
const MM_PER_METRE = 1000;
/** a thousandth of a mm or kg: beyond it is noise of the float */
const DECIMALS = 1000;

/** Which products most of the rows keep, whichever they are; masses that are as before an edit stay that object. */
export function identityHabits(answers: AnswersOfBars, before: IdentityHabits | null): IdentityHabits {
  const found = { perMetre: ownMasses(answers) };
  const perMetre = before !== null && samePerMetre(before, found) ? before.perMetre : found.perMetre;
  const broken = answers.those(brokenProducts, perMetre);
  const { share: least, rows } = IDENTITIES.value;
  const speaking = NAMES.filter((name) => {
    const tested = answers.count(IS_TESTED[name]);
    const kept = tested - broken.filter(({ answer }) => answer.includes(name)).length;
    return kept >= rows && kept >= least * tested;
  });
  const habits = { speaking: new Set(speaking), perMetre, brokenRows: new WeakMap() };
  return before?.perMetre === perMetre && sameSpeaking(before, habits) ? before : habits;
}

/** The bars that break any product, speaking or not. */
export function breakingRows(
  answers: AnswersOfBars,
  { perMetre }: IdentityHabits,
): readonly Answered<readonly RowIdentity[]>[] {
  return answers.those(brokenProducts, perMetre);
}

function brokenProducts(
  facts: BarFacts,
  perMetre: ReadonlyMap<number, number>,
): readonly RowIdentity[] | null {
  if (keepsAllSurely(facts, perMetre)) return null;
  let broken: RowIdentity[] | null = null;
  for (const name of NAMES) {
    if (isSurelyKept(name, facts, perMetre) || isKept(name, facts, perMetre) !== false) continue;
    broken ??= [];
    broken.push(name);
  }
  return broken;
}

/** Most rows have no more than counts, a length and one mass, and are told in a few steps. */
function keepsAllSurely(facts: BarFacts, perMetre: ReadonlyMap<number, number>): boolean {
  const { row } = facts;
  const { members, each, total, mass, totalLength = null, pieceMass = null } = row;
  if (totalLength !== null || pieceMass !== null) return false;
  if (members !== null && each !== null && total !== null && total !== members * each) return false;
  return mass === null || !(mass > 0) || isSurelyKept("mass", facts, perMetre);
}

/** leaves what floats may make of a product to the exact comparison */
const SURELY = 0.999999;

/** Most masses are told in a few steps, without the cell's own text. */
function isSurelyKept(name: RowIdentity, facts: BarFacts, perMetre: ReadonlyMap<number, number>): boolean {
  if (name === "members" || name === "totalLength" || name === "pieceMass") return false;
  const own = name === "mass" ? massByLength(facts) : massByTotal(facts);
  const ratio = own / (massPerMetre(facts, perMetre) ?? Number.NaN);
  const near = SURELY * IDENTITIES.value.massWithin;
  return ratio - 1 <= near && 1 - ratio <= near;
}

const hasBar = ({ row }: BarFacts): boolean => massPerMetreOf(row.size) !== null;
const IS_TESTED: Readonly<Record<RowIdentity, (facts: BarFacts) => boolean>> = {
  members: (facts) => isKept("members", facts, NO_MASSES) !== null,
  totalLength: ({ row, count }) =>
    row.length !== null && count !== null && row.length * count > 0 && (row.totalLength ?? null) !== null,
  mass: (facts) => hasBar(facts) && !Number.isNaN(massByLength(facts)),
  massOfTotal: (facts) => hasBar(facts) && !Number.isNaN(massByTotal(facts)),
  pieceMass: (facts) => isKept("pieceMass", facts, NO_MASSES) !== null,
};

const massByLength = (facts: BarFacts) => massOver(facts, (facts.row.length ?? 0) * (facts.count ?? 0));
const massByTotal = (facts: BarFacts) => massOver(facts, facts.row.totalLength ?? 0);
const NO_MASSES: ReadonlyMap<number, number> = new Map();

/** kg/m as the row has it; NaN where it gives none. */
function massOver({ row }: BarFacts, millimetres: number): number {
  return row.mass !== null && row.mass > 0 && millimetres > 0
    ? row.mass / (millimetres / MM_PER_METRE)
    : Number.NaN;
}

/** What the row breaks of the products that most rows of its sheet keep; null where it keeps them all. */
export function brokenBy(facts: BarFacts): BrokenRow | null {
  const { identities } = facts.sheet.habits;
  let known = identities.brokenRows.get(facts);
  if (known === undefined) {
    known = { found: brokenUnder(facts, identities) };
    identities.brokenRows.set(facts, known);
  }
  return known.found;
}

function brokenUnder(facts: BarFacts, { speaking, perMetre }: IdentityHabits): BrokenRow | null {
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
  if (ofLength !== undefined && fitsDimensions(facts)) votes.set("length", ofLength - 1);
  // a mass that agrees with the total length may be worked out from it
  if (lengthWouldBeBeyondStock(facts, broken)) votes.set("totalLength", Math.max(...votes.values()) + 1);
  const most = Math.max(...votes.values());
  const suspects = [...votes].filter(([, one]) => one === most).map(([field]) => field);
  return { broken, suspects, expected: expectedOf(facts, suspects) };
}

/** The length that the total length asks for is one that no bar is rolled in, and the typed one is not. */
function lengthWouldBeBeyondStock({ row, count }: BarFacts, broken: readonly RowIdentity[]): boolean {
  if (!broken.includes("totalLength") || row.length === null || count === null || count <= 0) return false;
  const asked = (row.totalLength ?? 0) / count;
  return asked > LONGEST_ROLLED.value && row.length <= LONGEST_ROLLED.value;
}

const fitting = new WeakMap<BarFacts, boolean>();

/** The length follows from the dimensions. */
function fitsDimensions(facts: BarFacts): boolean {
  let fits = fitting.get(facts);
  if (fits === undefined) {
    fits = facts.lengthJudgement.kind === "fits";
    fitting.set(facts, fits);
  }
  return fits;
}

/** kg/m of the row's size: the sheet's own where several rows of it agree, else the standard's. */
export function perMetreOf(facts: BarFacts): number | null {
  return massPerMetre(facts, facts.sheet.habits.identities.perMetre);
}

function massPerMetre({ row, diameter }: BarFacts, own: ReadonlyMap<number, number>): number | null {
  return own.get(diameter ?? 0) ?? massPerMetreOf(row.size);
}

/** True or false, null where the row cannot be tested. */
function isKept(name: RowIdentity, facts: BarFacts, perMetre: ReadonlyMap<number, number>): boolean | null {
  const { row, count } = facts;
  if (name === "members") {
    const { members, each, total } = row;
    return members === null || each === null || total === null ? null : total === members * each;
  }
  if (name === "pieceMass") {
    const kept = keepsMass(facts, row.length, perMetre, "pieceMass");
    return kept === true && isOffItsShare(facts, perMetre) ? false : kept;
  }
  if (name === "massOfTotal") return keepsMass(facts, row.totalLength ?? null, perMetre);
  const product = row.length === null || count === null ? null : row.length * count;
  return name === "mass" ? keepsMass(facts, product, perMetre) : keepsTotal(facts, product);
}

function keepsMass(
  facts: BarFacts,
  millimetres: number | null,
  own: ReadonlyMap<number, number>,
  field: "mass" | "pieceMass" = "mass",
): boolean | null {
  const mass = facts.row[field] ?? null;
  if (mass === null || !(mass > 0) || millimetres === null || !(millimetres > 0)) return null;
  const perMetre = massPerMetre(facts, own);
  if (perMetre === null) return null;
  const expected = (millimetres / MM_PER_METRE) * perMetre;
  const { massWithin, fromTable, half } = IDENTITIES.value;
  // of a size that the standard does not hold the table that the sheet goes by is not known
  const isKnown = facts.bar !== null || own.has(facts.diameter ?? 0);
  const off = Math.abs(mass - expected) - (isKnown ? massWithin : fromTable) * expected;
  if (off <= 0 || off <= half * lastPlace(facts, field)) return true;
  // the sheet's own is learnt of rounded masses
  const ofTable = ((massPerMetreOf(facts.row.size) ?? 0) * millimetres) / MM_PER_METRE;
  return Math.abs(mass - ofTable) <= half * lastPlace(facts, field);
}

/** Of a size whose table is not known: no rounding of the share of the row's mass, which is near enough to any table. */
function isOffItsShare(facts: BarFacts, perMetre: ReadonlyMap<number, number>): boolean {
  const { row, count } = facts;
  if (row.mass === null || !count || isKept("mass", facts, perMetre) !== true) return false;
  const share = row.mass / count;
  const { massWithin, half } = IDENTITIES.value;
  const rounded = half * (lastPlace(facts, "pieceMass") + lastPlace(facts, "mass") / count);
  return Math.abs((row.pieceMass ?? share) - share) > rounded + massWithin * share;
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
  if (name === "pieceMass") return ["length", "size", "pieceMass"];
  const counts: readonly AmountField[] = row.total !== null ? ["total"] : ["members", "each"];
  return name === "mass" ? [...counts, "length", "size", "mass"] : [...counts, "length", "totalLength"];
}

/** mm or kg in one of the last place that the cell shows. */
function lastPlace(facts: BarFacts, field: "mass" | "pieceMass" | "length" | "totalLength"): number {
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
    length: [whole / count, (given(row.pieceMass) / given(perMetreOf(facts))) * MM_PER_METRE],
    totalLength: [count * length],
    mass: [((count * length) / MM_PER_METRE) * given(perMetreOf(facts))],
    pieceMass: [(length / MM_PER_METRE) * given(perMetreOf(facts))],
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
function ownMasses(answers: AnswersOfBars): ReadonlyMap<number, number> {
  const { sizeRows, fromTable } = IDENTITIES.value;
  const masses = new Map<number, number>();
  for (const [diameter, found] of answers.figures(ownMass)) {
    const middle = found[found.length >> 1] as number;
    const one = answers.bars.find((facts) => facts.diameter === diameter);
    const table = massPerMetreOf(one?.row.size ?? null);
    const isNear = table !== null && Math.abs(Math.log(middle / table)) < fromTable;
    if (found.length >= sizeRows && isNear) masses.set(diameter, middle);
  }
  return masses;
}

function ownMass(facts: BarFacts): { group: number; figure: number } | null {
  const figure = massByLength(facts);
  return facts.diameter === null || Number.isNaN(figure) ? null : { group: facts.diameter, figure };
}
