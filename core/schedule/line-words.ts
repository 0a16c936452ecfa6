import { columnLetters } from "./cell-address";
import type { Sheet } from "./sheet";

/**
 * Where a bar stands, from its row of the used range: "row 12", or "column G" where bars stand side by side.
 *
 * @example lineWords(sheet, 11) // "row 12" where the used range begins at A1
 */
export function lineWords({ top, isTurned }: Pick<Sheet, "top" | "isTurned">, row: number): string {
  return isTurned === true ? `column ${columnLetters(top + row)}` : `row ${top + row + 1}`;
}
