import { cleanText } from "../cells/clean-text";
import { inMillimetres } from "../cells/read-length-cell";
import { type CommaUse, readNumberText } from "../cells/read-number-text";
import type { TableColumns } from "../columns/table-columns";
import type { Cell } from "../sheet";

/** mm: what a column of laps gives for the row; null where it gives nothing that can be read. */
export function lapBeside(
  { lap, length }: TableColumns,
  cells: readonly Cell[],
  comma: CommaUse,
): number | null {
  const cell = lap < 0 ? null : cells[lap];
  if (length === null || (typeof cell !== "number" && typeof cell !== "string")) return null;
  const value = typeof cell === "number" ? cell : readNumberText(cleanText(cell), comma);
  return value !== null && value > 0 ? inMillimetres(value, length.how.factor) : null;
}
