import type { BarFacts } from "../bar/bar-facts";
import { IDENTITIES } from "../bar/identities.data";
import type { AmountField, RowIdentity } from "../bar/identity-habits";
import { brokenBy, perMetreOf } from "../bar/row-identities";

const MM_PER_METRE = 1000;

/** The cell at which the product's own rule tells that it is broken. */
export const OWN_CELL: Readonly<Record<RowIdentity, AmountField>> = {
  members: "total",
  totalLength: "totalLength",
  mass: "mass",
  massOfTotal: "mass",
  pieceMass: "pieceMass",
};

/** A product is broken at another cell than the one at which its own rule would tell it: one rule names the cause. */
export function isTogether(facts: BarFacts, found = brokenBy(facts)): boolean {
  if (found === null) return false;
  // no other rule tells of the mass of one bar
  if (found.broken.includes("pieceMass")) return true;
  // the rule of masses does not judge a size that the standard in force does not hold
  const isOfMass = found.broken.every((name) => OWN_CELL[name] === "mass");
  if (isOfMass) return !isJudgedByMass(facts) && !isOfOtherTable(facts);
  return !found.broken.every((name) => found.suspects.includes(OWN_CELL[name]));
}

function isJudgedByMass({ bar, sheet }: BarFacts): boolean {
  return bar !== null && sheet.habits.standardMeant === null;
}

/** Of a size that the sheet does not show a mass of, or near enough to be the mass of the same bar in another standard's table, where the sheet does not show its own. */
function isOfOtherTable(facts: BarFacts): boolean {
  const { row, count, diameter, sheet } = facts;
  const perMetre = perMetreOf(facts);
  if (sheet.habits.identities.perMetre.has(diameter ?? 0) || perMetre === null) return false;
  // a size that the standard does not make, and the sheet hardly uses, is told by itself
  if (sheet.habits.standardMeant === null) return true;
  const expected = (((row.length ?? 0) * (count ?? 0)) / MM_PER_METRE) * perMetre;
  return Math.abs(Math.log((row.mass ?? 0) / expected)) < IDENTITIES.value.fromTable;
}
