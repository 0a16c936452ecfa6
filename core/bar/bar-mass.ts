import { massPerMetreOf } from "../schedule/cells/size-elsewhere";
import { resolveStandard } from "../standards/index";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { barCount } from "./bar-count";
import type { BarFacts } from "./bar-facts";
import { type BarLength, type BarPurpose, barLength } from "./bar-length";
import { IDENTITIES } from "./identities.data";

const MM_PER_METRE = 1000;
/** the same digits as a worksheet function gives: what lies beyond is noise of the float */
const DIGITS = 13;
/** kg: below float noise, and beyond any job */
const LEAST_MASS = 1e-6;
const MOST_MASS = 1e12;

const sizeNotMade = defineRefusal(
  "bar-size-not-made",
  "not-held",
  'size "{typed}" is no bar of {standard}, so it has no mass',
);
const massBeyondReason = defineRefusal(
  "mass-beyond-reason",
  "value",
  "the mass comes out as no number: look for a length or count with too many figures",
);

/** kg of one bar for a purpose: its length times the standard's mass per metre. */
export function barMass(facts: BarFacts, purpose: BarPurpose): number | Refusal {
  return massOf(facts, barLength(facts, purpose), 1);
}

/** kg of all bars of a row for a purpose. */
export function rowMass(facts: BarFacts, purpose: BarPurpose): number | Refusal {
  return rowMassOf(facts, barLength(facts, purpose));
}

/** kg of all bars of a row, each of `length`. */
export function rowMassOf(facts: BarFacts, length: BarLength | Refusal): number | Refusal {
  if (isRefusal(length)) return length;
  const count = barCount(facts);
  return isRefusal(count) ? count : massOf(facts, length, count);
}

function massOf(facts: BarFacts, length: BarLength | Refusal, count: number): number | Refusal {
  const perMetre = perMetreToWeigh(facts);
  if (perMetre === null) return sizeNotMade({ typed: facts.sizeName, standard: facts.standard.id });
  if (isRefusal(length)) return length;
  const mass = Number(((length.length / MM_PER_METRE) * perMetre * count).toPrecision(DIGITS));
  return isMassOfBars(mass) ? mass : massBeyondReason({});
}

/**
 * kg/m of the bar by the standard in force. A size or bar type that it does not hold, or that nearly all sizes of the
 * sheet show to be of another, is weighed as the sheet itself weighs it, where its masses agree with each other or with
 * the table of the other standard, or where it states kg/m; else by that table.
 */
export function perMetreToWeigh(facts: BarFacts): number | null {
  const { bar, row } = facts;
  const meant = facts.sheet.habits.standardMeant;
  const isOwnType = facts.grade !== null || (row.size?.prefix ?? "") === "";
  if (bar !== null && meant === null && isOwnType) return bar.massPerMetre;
  const standard = meant === null || row.sizeTyped === null ? null : resolveStandard(meant.id);
  const reading = standard === null || isRefusal(standard) ? null : standard.readSize(row.sizeTyped ?? "");
  const ofMeant = reading === null || isRefusal(reading) ? null : reading.bar;
  const ofTable = ofMeant?.massPerMetre ?? massPerMetreOf(row.size);
  return ofTable === null ? null : (ofSheet(facts, ofTable) ?? ofTable);
}

function ofSheet(facts: BarFacts, ofTable: number): number | null {
  const { row, diameter, count } = facts;
  const { identities, statedMasses } = facts.sheet.habits;
  const learnt = identities.perMetre.get(diameter ?? 0) ?? statedMasses.get(diameter ?? 0);
  if (learnt !== undefined) return learnt;
  const metres = ((row.length ?? 0) / MM_PER_METRE) * (count ?? 0);
  const own = row.mass === null || !(metres > 0) ? Number.NaN : row.mass / metres;
  return Math.abs(Math.log(own / ofTable)) < IDENTITIES.value.fromTable ? own : null;
}

/** True for a mass that a row of bars can have, kg. */
export function isMassOfBars(mass: number): boolean {
  return mass > LEAST_MASS && mass < MOST_MASS;
}
