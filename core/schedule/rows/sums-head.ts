import type { Standard } from "../../standards/port";
import type { TotalRow } from "../bar-row";
import { isFilled } from "../cells/is-filled";
import type { Cell } from "../sheet";
import type { Block } from "./block";
import { mayBeBar } from "./lines-of-sizes";
import { labelOf } from "./row-cells";
import { sizeOfTitled, sizesDown } from "./sizes-down";
import { headsSums, sizesInRow, totalRow } from "./sum-rows";

/** What a row that heads sums by size says of the lines below it. */
export interface SumsHead {
  /** sizes that stand one beside another in it; none where they stand one below another */
  readonly sizes: readonly { readonly size: string; readonly column: number }[];
  /** last of the lines below, where it is known */
  readonly until: number | null;
  /** the row is the first of the lines itself, behind their title */
  readonly line?: TotalRow;
}

/** size, count, length and shape or dimensions */
const FIELDS_OF_BAR = 4;

/** words alone head the lines below, to whatever row */
export const NO_SIZES: SumsHead = { sizes: [], until: null };

/**
 * The row as the head of a block of sums: bar sizes one beside another, words over sizes that stand one below another,
 * or words of sizes and sums alone. Null where it heads none.
 *
 * @param block the table that the row stands under; undefined before the first
 */
export function sumsHead(
  cellsOf: (row: number) => readonly Cell[],
  row: number,
  filled: readonly number[],
  block: Block | undefined,
  standard: Standard,
): SumsHead | null {
  if (block === undefined) return null;
  const named = filled.length < 3 ? null : sizesInRow(cellsOf(row), filled, standard);
  if (named !== null) {
    const { signs, layout } = block.reader;
    const isNamed = isFilled(cellsOf(row), layout.table.columns.get("mark")?.column ?? -1);
    const isWhole = isNamed && signs.fieldsFilled(cellsOf(row)) >= FIELDS_OF_BAR;
    return isWhole && mayBeBar(cellsOf(row), named, cellsOf(row + 1)) ? null : { sizes: named, until: null };
  }
  const words = headsSums(cellsOf(row), filled);
  // where its words say sums the lines may hold as many cells as a bar
  const columns = words ? Number.POSITIVE_INFINITY : block.reader.layout.table.columns.size;
  const until = sizesDown(cellsOf, row, filled, columns, standard);
  const titled = until === null ? null : sizeOfTitled(cellsOf(row), filled, standard);
  if (titled !== null) {
    const { table, comma } = block.reader.layout;
    if (titled === table.columns.get("size")?.column) return null;
    const own = filled.slice(1);
    const line = totalRow(cellsOf(row), row, own, labelOf(cellsOf(row), own), "summary", comma);
    return { sizes: [], until, line };
  }
  // under lines of sums words alone begin no others
  const isHead = until !== null || (block.summary === null && words);
  return isHead ? { sizes: [], until } : null;
}
