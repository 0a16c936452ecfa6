import type { BarFacts } from "../bar/bar-facts";
import { perMetreOf } from "../bar/row-identities";
import type { SummedField } from "./sum-lines";

const MM_PER_METRE = 1000;
/** a length in a wrong unit, or a figure with its point misplaced */
const SLIPS = [10, 100, 1000] as const;
/** mm: a length that is short or long enough to be a slip, and what it may be meant as */
const [SHORT, LONG] = [2000, 9000];
const [LEAST, MOST] = [100, 18_000];
/** of a whole number */
const NEAR_WHOLE = 0.01;

/** What a bar's number, length or mass may be by what else its row says, or by the length that others expect of it. */
export function otherFigures(
  facts: BarFacts,
  figure: SummedField,
  expected: readonly number[],
  isMassOpen: boolean,
): readonly number[] {
  const counts = countsOf(facts);
  const lengths = distinct([...lengthsOf(facts, counts), ...expected]);
  const { mass } = facts.row;
  // what number, length and size make is known to be meant before a point is moved
  const isOpen = isMassOpen && perMetreOf(facts) === null;
  const slips = mass === null || !isOpen ? [] : SLIPS.flatMap((factor) => [mass * factor, mass / factor]);
  const made = figuresOf(facts, figure, counts, lengths);
  const { pieceMass = null } = facts.row;
  const ofPieces = pieceMass === null ? [] : counts.map((count) => count * pieceMass);
  return figure === "mass" ? distinct([mass, ...ofPieces, ...made, ...slips]) : made;
}

/** What they would be with one digit of the number or of the length other, or two of them exchanged. */
export function figuresOfDigits(facts: BarFacts, figure: SummedField): readonly number[] {
  const { row, count } = facts;
  const counts = count === null ? [] : digitsOff(count);
  const lengths = row.length === null ? [] : digitsOff(row.length);
  return [
    ...figuresOf(facts, figure, counts, distinct([row.length]), false),
    ...figuresOf(facts, figure, distinct([count]), lengths, false),
  ];
}

function figuresOf(
  facts: BarFacts,
  figure: SummedField,
  counts: readonly number[],
  lengths: readonly number[],
  withTotal = true,
): readonly number[] {
  if (figure === "total") return counts;
  const products = counts.flatMap((count) => lengths.map((length) => count * length));
  const totals = distinct(withTotal ? [facts.row.totalLength, ...products] : products);
  const perMetre = perMetreOf(facts);
  if (figure === "totalLength") return totals;
  return perMetre === null ? [] : totals.map((total) => (total / MM_PER_METRE) * perMetre);
}

function countsOf(facts: BarFacts): readonly number[] {
  const { members, each, total, length, mass, totalLength = null } = facts.row;
  const ofMembers = members === null || each === null ? null : members * each;
  const ofLength = totalLength === null || length === null ? null : totalLength / length;
  const perMetre = perMetreOf(facts);
  const one = perMetre === null || length === null ? null : (length / MM_PER_METRE) * perMetre;
  const ofMass = mass === null || one === null ? null : mass / one;
  return distinct([facts.count, total, ofMembers, whole(ofLength), whole(ofMass)]);
}

function lengthsOf(facts: BarFacts, counts: readonly number[]): readonly number[] {
  const { row, lengthInForce, cut } = facts;
  const { totalLength = null, mass } = row;
  const perMetre = perMetreOf(facts);
  const ofMass = mass === null || perMetre === null ? null : (mass / perMetre) * MM_PER_METRE;
  const shared = counts.flatMap((count) => [totalLength, ofMass].map((all) => (all ?? 0) / count));
  const typed = row.length ?? 0;
  const slips = SLIPS.flatMap((factor) => [
    ...(typed < SHORT ? [typed * factor] : []),
    ...(typed > LONG ? [typed / factor] : []),
  ]).filter((slip) => slip >= LEAST && slip <= MOST);
  return distinct([lengthInForce, cut?.length, ...shared, ...slips]);
}

function whole(value: number | null): number | null {
  if (value === null || !Number.isFinite(value)) return null;
  const rounded = Math.round(value);
  return Math.abs(rounded - value) <= NEAR_WHOLE * rounded ? rounded : null;
}

function distinct(values: readonly (number | null | undefined)[]): readonly number[] {
  return [...new Set(values)].filter((value): value is number => Number.isFinite(value) && (value ?? 0) > 0);
}

const DIGITS = "0123456789";

function digitsOff(value: number): readonly number[] {
  const text = String(value);
  if (!Number.isInteger(value)) return [];
  const others: string[] = [];
  for (let at = 0; at < text.length; at += 1) {
    for (const digit of DIGITS) others.push(text.slice(0, at) + digit + text.slice(at + 1));
    others.push(
      text.slice(0, at) + (text[at + 1] ?? "") + text.charAt(at) + text.slice(at + 2),
      text.slice(0, at) + text.slice(at + 1),
    );
  }
  return distinct(others.map(Number)).filter((other) => other !== value);
}
