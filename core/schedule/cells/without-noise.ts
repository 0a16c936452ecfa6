import type { Cell } from "../sheet";

/** decimals that a schedule may have, and how near to them a number is that adding and dividing left beside them */
const PLACES = 1e9;
const NEAR = 1e-12;

/**
 * The number that is meant where sums and products of floats left the last bits off: 2000.0000000000005 is 2000, which
 * no rounding up may take for more. Any other cell, and a number with more decimals, is given back.
 */
export function withoutNoise(cell: Cell): Cell {
  if (typeof cell !== "number" || Number.isInteger(cell)) return cell;
  const rounded = Math.round(cell * PLACES) / PLACES;
  return Math.abs(rounded - cell) <= NEAR * Math.abs(cell) ? rounded : cell;
}

/** The same of a row; the row itself where no cell changes. */
export function rowWithoutNoise(cells: readonly Cell[]): readonly Cell[] {
  let clean: Cell[] | null = null;
  for (let column = 0; column < cells.length; column += 1) {
    const cell = cells[column] as Cell;
    if (typeof cell !== "number" || Number.isInteger(cell)) continue;
    const meant = withoutNoise(cell);
    if (meant === cell) continue;
    clean ??= [...cells];
    clean[column] = meant;
  }
  return clean ?? cells;
}
