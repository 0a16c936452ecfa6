import type { BarFacts } from "../bar/bar-facts";
import { offLegs } from "../bar/legs-in-words";
import { offLengthHabit } from "../bar/length-habits";
import { brokenBy, perMetreOf } from "../bar/row-identities";
import type { SheetFacts } from "../bar/sheet-facts";
import { type Finding, SEVERITIES } from "./finding";

/** of a length, where they stand in one cell */
const OF_LENGTH: ReadonlySet<string> = new Set([
  "SUM109",
  "LEN102",
  "LEN108",
  "LEN112",
  "UNIT101",
  "SUPPLY101",
]);
/** of the legs, which say what the length is to be */
const OF_LEGS: ReadonlySet<string> = new Set(["LEN108", "LEN112"]);
/** of what a wrong length makes wrong */
const OF_PRODUCT: ReadonlySet<string> = new Set(["MASS101", "SUM108", "SUM109"]);
const OF_SIZE: ReadonlySet<string> = new Set(["SIZE107", "SIZE101", "SIZE102"]);
const [UNREAD, OTHER_COLUMN, PER_METRE, MASS, NUMBERS] = [
  "READ101",
  "SIZE106",
  "MASS103",
  "MASS101",
  "SUM109",
];
const [LACKS_LEG, TAKES_NO_LEG] = ["SHAPE103", "SHAPE104"];
/** tables of masses and roundings of offices differ by less */
const NEAR = 0.02;
const MM_PER_METRE = 1000;

/**
 * One slip of a row's length, of its size or of the place of a leg is one finding: the surest of its cell, with what
 * the others found.
 */
export function withOneOfRow(findings: readonly Finding[], facts: SheetFacts): readonly Finding[] {
  const byRow = new Map<number, Finding[]>();
  for (const finding of findings) {
    if (finding.row === null || finding.severity === "note" || !isOfSlip(finding)) continue;
    const before = byRow.get(finding.row);
    if (before === undefined) byRow.set(finding.row, [finding]);
    else before.push(finding);
  }
  const instead = new Map<Finding, Finding | null>();
  let lengths: ReadonlyMap<BarFacts, number> | null = null;
  for (const [row, told] of byRow) {
    if (told.length < 2) continue;
    const bar = facts.barAt(row - facts.sheet.top - 1, told[0]?.cell ?? null);
    if (bar === undefined) continue;
    lengths ??= lengthsOfLegs(facts);
    for (const group of [ofLength(told, bar, lengths.get(bar)), ofSize(told, bar), ofLegs(told)]) {
      const left = group.filter((one) => !instead.has(one));
      if (left.length < 2) continue;
      const [kept] = surestFirst(left.filter(({ cell }) => cell === left[0]?.cell));
      if (kept === undefined) continue;
      const others = left.filter((one) => one !== kept);
      for (const other of others) instead.set(other, null);
      const message = [kept, ...others].map((one) => one.message).join("; ");
      instead.set(kept, { ...kept, message, fix: fixIn(kept, others) });
    }
  }
  if (instead.size === 0) return findings;
  return findings.flatMap((finding) => {
    const now = instead.get(finding);
    return now === undefined ? [finding] : now === null ? [] : [now];
  });
}

const isOfSlip = ({ code }: Finding): boolean =>
  [OF_LENGTH, OF_PRODUCT, OF_SIZE].some((codes) => codes.has(code)) ||
  [UNREAD, OTHER_COLUMN, PER_METRE, LACKS_LEG, TAKES_NO_LEG].includes(code);

/** A fix of another cell would put right what is not wrong. */
const fixIn = (kept: Finding, others: readonly Finding[]): Finding["fix"] =>
  kept.fix ?? others.find(({ cell, fix }) => cell === kept.cell && fix !== null)?.fix ?? null;

/** Of several as sure the first. */
function surestFirst(group: readonly Finding[]): readonly Finding[] {
  const rank = ({ severity, outcome }: Finding): number =>
    2 * SEVERITIES.indexOf(severity) + (outcome === "broken" ? 0 : 1);
  return [...group].sort((one, other) => rank(one) - rank(other));
}

/** mm that the legs of bars make that are told to make another length than is typed. */
function lengthsOfLegs(facts: SheetFacts): ReadonlyMap<BarFacts, number> {
  return new Map<BarFacts, number>([
    ...offLegs(facts).map(({ facts: bar, sum }) => [bar, sum] as const),
    ...offLengthHabit(facts).map(({ facts: bar, expected }) => [bar, expected] as const),
  ]);
}

/** What stands in the cell of the length, and the products that come out with the length that the legs make. */
function ofLength(told: readonly Finding[], bar: BarFacts, ofLegs: number | undefined): readonly Finding[] {
  const legs = told.find(({ code }) => OF_LEGS.has(code));
  const cell = legs?.cell ?? told.find(({ code }) => code === NUMBERS)?.cell ?? null;
  const inCell = told.filter((one) => one.cell === cell && OF_LENGTH.has(one.code));
  if (legs === undefined || ofLegs === undefined || !fitsProducts(bar, ofLegs)) return inCell;
  return [...inCell, ...told.filter((one) => !inCell.includes(one) && OF_PRODUCT.has(one.code))];
}

/** The mass, or else the total length, is that of bars of this length. */
function fitsProducts(bar: BarFacts, length: number): boolean {
  const { mass, totalLength = null } = bar.row;
  const all = (bar.count ?? 0) * length;
  const perMetre = perMetreOf(bar);
  const ofMass = mass === null || perMetre === null ? null : isNear(mass, (all / MM_PER_METRE) * perMetre);
  const ofTotal = totalLength === null ? null : isNear(totalLength, all);
  return ofMass !== false && ofTotal !== false && (ofMass ?? ofTotal) !== null;
}

/** A size that is none or a stray, and what is another for it; or a mass of one metre and of all that are another size's. */
function ofSize(told: readonly Finding[], bar: BarFacts): readonly Finding[] {
  const isOfSize = brokenBy(bar)?.suspects.includes("size") === true;
  const size = told.find(({ code }) => OF_SIZE.has(code));
  if (size !== undefined) {
    const others = told.filter(
      (one) =>
        one !== size &&
        ([OTHER_COLUMN, PER_METRE].includes(one.code) ||
          (one.code === UNREAD && one.cell === size.cell) ||
          (one.code === NUMBERS && isOfSize)),
    );
    return [size, ...others];
  }
  const { unitMass = null, mass, totalLength = null, length } = bar.row;
  const all = totalLength ?? (length ?? 0) * (bar.count ?? 0);
  if (unitMass === null || mass === null || !isNear(mass, (all / MM_PER_METRE) * unitMass)) return [];
  const others = told.filter(({ code }) => code === MASS || (code === NUMBERS && isOfSize));
  return [...told.filter(({ code }) => code === PER_METRE), ...others];
}

/** One leg that is lacking and one that the shape does not take: it stands in another's column. */
function ofLegs(told: readonly Finding[]): readonly Finding[] {
  const [lacking, extra] = [LACKS_LEG, TAKES_NO_LEG].map((code) => told.filter((one) => one.code === code));
  return lacking?.length === 1 && extra?.length === 1 ? [...lacking, ...extra] : [];
}

function isNear(typed: number, made: number): boolean {
  return made > 0 && Math.abs(typed - made) <= NEAR * made;
}
