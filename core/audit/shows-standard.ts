import type { SheetFacts } from "../bar/sheet-facts";
import { isMost } from "../bar/sheet-habits";
import type { RuleContext } from "./rule-context";

/** Codes that several standards share show none where they or most lengths are of another. */
export function showsStandard(facts: SheetFacts, { standard }: RuleContext): boolean {
  const { habits } = facts;
  const isOfAnother = isMost(habits.offStepShare) || habits.standardMeant !== null;
  return habits.showsStandard && !isOfAnother && facts.codesMeant(standard) === null;
}
