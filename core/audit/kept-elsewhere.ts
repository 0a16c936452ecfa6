import type { BarFacts } from "../bar/bar-facts";
import { keepsOwnDeviation } from "../bar/own-deviations";
import type { SheetHabits } from "../bar/sheet-habits";
import { DEDUCTION_ROUNDED } from "./practice.data";
import type { RuleContext } from "./rule-context";

type Asked = Pick<RuleContext, "isStandardAssumed" | "isStandardNamed">;

/** True where nobody chose the document, no sheet names it, and the lengths of this one are by another. */
export function hasLengthsElsewhere({ lengthsElsewhere }: SheetHabits, asked: Asked): boolean {
  return lengthsElsewhere && isOpen(asked);
}

/** The same of the ends of bars: what such a document asks of them is told as a note. */
export function hasEndsElsewhere({ lengthsElsewhere, endsOwnWay }: SheetHabits, asked: Asked): boolean {
  return (lengthsElsewhere || endsOwnWay) && isOpen(asked);
}

/**
 * True where the bar is off such a document as the list's other bars of its code are, or, where the list keeps a step
 * that the document has not, by no more than offices' tables of deductions differ by.
 */
export function isLengthOwnWay(facts: BarFacts, asked: Asked): boolean {
  if (!isOpen(asked)) return false;
  const { habits } = facts.sheet;
  if (keepsOwnDeviation(facts, habits.lengthsOwnWay)) return true;
  const { cut, row } = facts;
  return habits.keepsAnotherStep && cut !== null && isWithinTables(facts, (row.length ?? 0) - cut.unrounded);
}

/** Within what each bend's deduction is rounded by, office by office; mm. */
export function isWithinTables({ diameter, bendCount }: BarFacts, difference: number): boolean {
  if (diameter === null) return false;
  return Math.abs(difference) <= DEDUCTION_ROUNDED.value * diameter * (bendCount ?? 0);
}

/** True where nobody chose the document and no sheet names it. */
export const isOpen = ({ isStandardAssumed, isStandardNamed }: Asked): boolean =>
  isStandardAssumed && !isStandardNamed;
