import type { Standard } from "../../standards/port";
import type { Cell } from "../sheet";
import { sizesDown } from "./sizes-down";
import { headsSums, sizesInRow } from "./sum-rows";

/** What a row that heads sums by size says of the lines below it. */
export interface SumsHead {
  /** sizes that stand one beside another in it; none where they stand one below another */
  readonly sizes: readonly { readonly size: string; readonly column: number }[];
  /** last of the lines below, where it is known */
  readonly until: number | null;
}

/**
 * The row as the head of a block of sums: bar sizes one beside another, words over sizes that stand one below another,
 * or words of sizes and sums alone. Null where it heads none.
 *
 * @param columns columns of the table of the bars; 0 where there is none yet
 * @param isOpen the rows above are lines of sums already, so that words alone begin no others
 */
export function sumsHead(
  cellsOf: (row: number) => readonly Cell[],
  row: number,
  filled: readonly number[],
  { columns, isOpen, standard }: { columns: number; isOpen: boolean; standard: Standard },
): SumsHead | null {
  if (columns === 0) return null;
  const named = filled.length < 3 ? null : sizesInRow(cellsOf(row), filled, standard);
  if (named !== null) return { sizes: named, until: null };
  const until = sizesDown(cellsOf, row, filled, columns, standard);
  return until !== null || (!isOpen && headsSums(cellsOf(row), filled)) ? { sizes: [], until } : null;
}
