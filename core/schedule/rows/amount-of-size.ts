import { KG_PER_UNIT, MM_PER_UNIT } from "../../units/unit-table";
import type { TableReading } from "../bar-row";
import { type Told, unread } from "../cells/cell-answer";
import { inMillimetres } from "../cells/read-length-cell";
import { MOST_MM } from "../cells/read-length-text";
import { MOST_MASS } from "../cells/read-mass-cell";
import type { CommaUse } from "../cells/read-number-text";
import { filledBySize } from "../columns/unit-by-size";
import type { Cell } from "../sheet";

export interface AmountOfSize {
  readonly column: number;
  /** mm */
  readonly totalLength: number | null;
  /** kg */
  readonly mass: number | null;
}

/** What stands under the column of the bar's size, where the rows show in which unit; null where nothing does. */
export function amountOfSize(
  { bySize = [], bySizeUnit: unit, columns }: TableReading,
  cells: readonly Cell[],
  comma: CommaUse,
): AmountOfSize | Told<never> | null {
  const filled = unit === undefined ? null : filledBySize(bySize, cells, comma);
  if (unit === undefined || filled === null) return null;
  const isMass = unit === "kg" || unit === "t" || unit === "lb";
  // what a column of masses says is told by it
  if (isMass && columns.has("mass")) return null;
  const { column, value } = filled;
  const amount = isMass
    ? unit === "t"
      ? value * KG_PER_UNIT.t
      : value
    : inMillimetres(value, MM_PER_UNIT[unit]);
  if (amount <= (isMass ? MOST_MASS : MOST_MM))
    return { column, totalLength: isMass ? null : amount, mass: isMass ? amount : null };
  const field = isMass ? "mass" : "totalLength";
  const reason = `the number is too large for a ${isMass ? "mass" : "length"}`;
  return unread({ field, column, typed: cells[column] ?? null }, reason);
}
