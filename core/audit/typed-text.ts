import { type Cell, isCellError } from "../schedule/sheet";

/** A cell's content as it is named in a message. */
export function typedText(cell: Cell): string {
  if (cell === null) return "";
  return isCellError(cell) ? cell.error : String(cell);
}
