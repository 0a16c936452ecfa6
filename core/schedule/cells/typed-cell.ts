import { type Cell, cellErrorReason, isCellError } from "../sheet";
import { shortened } from "./longest-text";

/** What stands in a cell, as text; null where nothing does. */
export function typedText(cell: Cell | undefined): string | null {
  if (cell === null || cell === undefined) return null;
  return isCellError(cell) ? cell.error : String(cell);
}

/** Why a cell is not what its column holds. */
export function otherReason(cell: Cell, isWhat: string): string {
  return isCellError(cell) ? cellErrorReason(cell) : `"${shortened(String(cell))}" is ${isWhat}`;
}
