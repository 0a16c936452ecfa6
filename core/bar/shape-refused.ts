import { developPath } from "../shapes/developed-length";
import { dimMissing } from "../shapes/resolve-shape";
import { isRefusal, isRefusalOf, refusalText } from "../units/refusal";
import type { BarFacts } from "./bar-facts";

/** Why a bar has no shape that could be drawn or bent to. */
export interface ShapeRefused {
  readonly why: string;
  /** the bar cannot be made as it is scheduled; else a figure is lacking, or is what the length leaves */
  readonly isCertain: boolean;
}

/** What keeps a bar from having a shape; null where it has one, or where none is read. */
export function shapeRefused(facts: BarFacts): ShapeRefused | null {
  const { resolved, row, standard } = facts;
  if (row.shape === null || resolved === null) return null;
  if (!isRefusal(resolved)) {
    const { path = null, diameter = 0, radius = 0 } = facts.shapeInForce ?? {};
    if (path === null || path.kind === "planar") return null;
    // a ring or helix that is no wider than its own bar
    const developed = developPath(path, { diameter, radius, unit: standard.unit });
    return isRefusal(developed) ? { why: refusalText(developed), isCertain: true } : null;
  }
  // a straight bar is often scheduled by its length alone
  if (facts.isStraight && row.length !== null && !isRefusal(facts.resolveWith([row.length]))) return null;
  if (isRefusalOf(resolved, dimMissing)) {
    const { letter } = resolved.values;
    // what a blank free dimension means is the audit's to say, which knows the habit of the sheet
    if (letter === facts.definition?.free && row.length !== null)
      return { why: `${letter} is blank, so nothing is drawn or marked`, isCertain: false };
    // a list that is recalled in part may give the code other letters
    if (standard.shapesInPart) return { why: refusalText(resolved), isCertain: false };
  }
  // a figure that the document lacks makes no bar unbendable
  return { why: refusalText(resolved), isCertain: resolved.kind !== "not-held" };
}
