import type { Cell } from "../sheet";

/** True where something stands in the cell. */
export function isFilled(cells: readonly Cell[], column: number): boolean {
  if (column < 0) return false;
  const cell = cells[column];
  return cell !== null && cell !== undefined && (typeof cell !== "string" || cell.trim() !== "");
}
