import type { BarRow } from "../schedule/bar-row";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";

/** What first tells two bars apart: size, shape, a dimension, radius or length; null where they are the same bar. */
export function firstDifference(a: BarRow, b: BarRow): string | null {
  if (a.size?.diameter !== b.size?.diameter || a.grade !== b.grade) return "size";
  if (a.shape !== b.shape) return "shape";
  for (let column = 0; column < Math.max(a.dims.length, b.dims.length); column += 1) {
    if ((a.dims[column] ?? null) !== (b.dims[column] ?? null))
      return DIMENSION_LETTERS[column] ?? "dimension";
  }
  if (a.radius !== b.radius) return "R";
  return a.length !== null && b.length !== null && a.length !== b.length ? "length" : null;
}
