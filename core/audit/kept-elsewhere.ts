import type { SheetHabits } from "../bar/sheet-habits";
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

const isOpen = ({ isStandardAssumed, isStandardNamed }: Asked): boolean =>
  isStandardAssumed && !isStandardNamed;
