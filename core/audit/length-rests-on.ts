import type { BarFacts } from "../bar/bar-facts";
import type { CutLength } from "../shapes/cut-length";
import { type Citation, leastSure } from "../standards/citation";
import { isRefusal } from "../units/refusal";

/** The least sure of what a cut length rests on: its formula, the r that it took, its h and n. */
export function lengthRestsOn({ shape, standard }: BarFacts, cut: CutLength): Citation {
  if (shape === null) return cut.cite;
  const { diameter, use, grade, compiled } = shape;
  const others: Citation[] = [];
  const printed = cut.formulaRadius === null ? null : standard.formulaRadius(diameter, use, grade);
  // a radius whose sources differ was decided with its formula
  if (printed !== null && !isRefusal(printed) && printed.cite.provenance !== "published")
    others.push(printed.cite);
  const allowance = compiled?.needsAllowance === true ? standard.endAllowance(diameter, grade) : null;
  if (allowance !== null && !isRefusal(allowance)) others.push(allowance.cite);
  return leastSure(cut.cite, ...others);
}
