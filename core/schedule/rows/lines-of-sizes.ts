import type { Standard } from "../../standards/port";
import { isFilled } from "../cells/is-filled";
import { LONGEST_VALUE } from "../cells/longest-text";
import type { Cell } from "../sheet";
import { filledColumns } from "./row-cells";
import { sizesInRow } from "./sum-rows";

const LEAST_SIZES = 3;
/** bars, metres, kg/m, mass, mass with waste, price */
const MOST_LINES = 6;
const DIGIT = /\d/;
const AMOUNT = /^[\d\s.,'\u2019]*\d[\d\s.,'\u2019]*$/;

/** A word and then numbers, each more than the one before, as "\u00d8 | 8 | 10 | 12": no bar at first sight. */
export function mayListSizes(cells: readonly Cell[]): boolean {
  let before = 0;
  let rising = 0;
  let isNamed = false;
  for (let column = 0; column < cells.length; column += 1) {
    const cell = cells[column] ?? null;
    if (cell === null || cell === "") continue;
    if (!isNamed) {
      if (typeof cell !== "string" || DIGIT.test(cell)) return false;
      isNamed = true;
    } else if (typeof cell === "string") break;
    else if (!(typeof cell === "number" && cell > before)) return false;
    else {
      before = cell;
      rising += 1;
    }
  }
  return rising >= LEAST_SIZES;
}

/**
 * The rows without sums by size that lie across them: a row of sizes one beside another, and under it words with nothing
 * but numbers in the same columns. The sums are no bars, and prove nothing of the columns they stand under.
 */
export function withoutLinesOfSizes(
  cellsOf: (row: number) => readonly Cell[],
  from: number,
  to: number,
  standard: Standard,
): (row: number) => readonly Cell[] {
  const left = new Set<number>();
  let under: ReadonlySet<number> | null = null;
  let lines = 0;
  for (let row = from; row < to; row += 1) {
    const cells = cellsOf(row);
    lines += 1;
    if (under === null || lines > MOST_LINES || !isLineUnder(cells, under)) {
      under = sizesAcross(cells, standard);
      lines = 0;
    }
    if (under !== null) left.add(row);
  }
  return left.size === 0 ? cellsOf : (row) => (left.has(row) ? NOTHING : cellsOf(row));
}

const NOTHING: readonly Cell[] = [];

/** Columns of a row of sizes with words before them; null for any other row. */
function sizesAcross(cells: readonly Cell[], standard: Standard): ReadonlySet<number> | null {
  const filled = filledColumns(cells);
  const [first, ...others] = filled;
  const words = cells[first ?? -1];
  if (others.length < LEAST_SIZES || typeof words !== "string" || DIGIT.test(words)) return null;
  const sizes = sizesInRow(cells, filled, standard);
  return sizes === null ? null : new Set(sizes.map(({ column }) => column));
}

function isLineUnder(cells: readonly Cell[], under: ReadonlySet<number>): boolean {
  let lines = 0;
  let words = 0;
  for (let column = 0; column < cells.length; column += 1) {
    if (!isFilled(cells, column)) continue;
    const isNumber = isAmount(cells[column]);
    if (isNumber && under.has(column)) lines += 1;
    else if (!isNumber) words += 1;
  }
  return lines > 0 && words <= 1 && lines + words >= filledColumns(cells).length - 1;
}

function isAmount(cell: Cell | undefined): boolean {
  if (typeof cell !== "string") return typeof cell === "number";
  return cell.length <= LONGEST_VALUE && AMOUNT.test(cell);
}
