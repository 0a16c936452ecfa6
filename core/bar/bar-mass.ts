import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { barCount } from "./bar-count";
import type { BarFacts } from "./bar-facts";
import { type BarPurpose, barLength } from "./bar-length";

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
  return massOf(facts, purpose, 1);
}

/** kg of all bars of a row for a purpose. */
export function rowMass(facts: BarFacts, purpose: BarPurpose): number | Refusal {
  const length = barLength(facts, purpose);
  if (isRefusal(length)) return length;
  const count = barCount(facts);
  return isRefusal(count) ? count : massOf(facts, purpose, count);
}

function massOf(facts: BarFacts, purpose: BarPurpose, count: number): number | Refusal {
  const { bar } = facts;
  if (bar === null) return sizeNotMade({ typed: facts.sizeName, standard: facts.standard.id });
  const length = barLength(facts, purpose);
  if (isRefusal(length)) return length;
  const mass = Number(((length.length / MM_PER_METRE) * bar.massPerMetre * count).toPrecision(DIGITS));
  return isMassOfBars(mass) ? mass : massBeyondReason({});
}

/** True for a mass that a row of bars can have, kg. */
export function isMassOfBars(mass: number): boolean {
  return mass > LEAST_MASS && mass < MOST_MASS;
}
