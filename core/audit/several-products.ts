import type { BarFacts } from "../bar/bar-facts";
import type { AmountField, RowIdentity } from "../bar/identity-habits";
import { brokenBy } from "../bar/row-identities";

/** The cell at which the product's own rule tells that it is broken. */
export const OWN_CELL: Readonly<Record<RowIdentity, AmountField>> = {
  members: "total",
  totalLength: "totalLength",
  mass: "mass",
  massOfTotal: "mass",
};

/** A product is broken at another cell than the one at which its own rule would tell it: one rule names the cause. */
export function isTogether(facts: BarFacts, found = brokenBy(facts)): boolean {
  if (found === null) return false;
  return !found.broken.every((name) => found.suspects.includes(OWN_CELL[name]));
}
