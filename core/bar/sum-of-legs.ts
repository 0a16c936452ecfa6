import type { BarFacts } from "./bar-facts";

/** mm: a sum is written to the next half inch or 10 mm, or a little coarser. */
const WRITTEN_TO = 13;
/** mm that the bends must take off for a sum to be told from a cut length */
const WORTH_TELLING = 5;

/**
 * Whether the typed length is the sum of the legs out to out, as lists of several countries give it, and not
 * the length to cut. False where the two cannot be told apart, and for hooks, whose length no leg tells.
 */
export function isSumOfLegs(facts: BarFacts): boolean {
  const { length } = facts.row;
  if (length === null || facts.lengthJudgement.kind !== "differs") return false;
  const { planarPath, exactLength } = facts;
  if (planarPath === null || exactLength === null || planarPath.legs.some(({ hook }) => hook !== undefined))
    return false;
  const sum = planarPath.legs.reduce((total, leg) => total + leg.length, 0);
  return sum - exactLength > WORTH_TELLING && Math.abs(length - sum) <= WRITTEN_TO;
}
