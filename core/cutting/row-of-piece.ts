import type { CutRow } from "./cut-row";

/** The sheet's own row number of a row to be cut; not a number where it stands in no row. */
export function rowOfPiece({ row, cell }: Pick<CutRow, "row" | "cell">): number {
  return row ?? Number(/\d+$/.exec(cell)?.[0] ?? Number.NaN);
}
