import { isFilled } from "../cells/is-filled";
import type { Cell } from "../sheet";
import type { RowSigns } from "./row-signs";

/** cells that a bar has at least: mark, size, count and length */
const LEAST_OF_BAR = 4;

interface Columns {
  readonly left: number;
  readonly right: number;
}

/**
 * The first of the cells right of a table that are as a row of it would be, moved there; -1 where none are.
 * Figures that somebody worked with beside a list are none: a name, size, whole number and length or shape have
 * to fit.
 */
export function barBeside(cells: readonly Cell[], { left, right }: Columns, signs: RowSigns): number {
  if (cells.length <= right + LEAST_OF_BAR) return -1;
  let first = -1;
  let last = -1;
  let filled = 0;
  let isNamed = false;
  for (let column = right + 1; column < cells.length; column += 1) {
    if (!isFilled(cells, column)) continue;
    if (first < 0) first = column;
    last = column;
    filled += 1;
    isNamed ||= typeof cells[column] === "string";
  }
  if (filled < LEAST_OF_BAR || !isNamed) return -1;
  for (let start = left; start <= right && start + last - first <= right; start += 1) {
    const moved = Array.from({ length: right + 1 }, (_, column) =>
      column < start ? null : (cells[column - start + first] ?? null),
    );
    if (signs.isBarForSure(moved)) return first;
  }
  return -1;
}
