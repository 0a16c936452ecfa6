import type { Cell } from "../schedule/sheet";
import type { LengthUnit } from "../units/length-unit";
import { parseLength } from "../units/parse-length";
import { isRefusal } from "../units/refusal";

/** A length above nought, or nought where that may be, in mm; null for what is none. */
export function lengthOfCell(cell: Cell | string, zero: boolean, unit: LengthUnit): number | null {
  if (typeof cell !== "number" && typeof cell !== "string") return null;
  if (cell === 0 || cell === "0") return zero ? 0 : null;
  const length = parseLength(cell, unit);
  return isRefusal(length) || length <= 0 ? null : length;
}
