import type { Standard } from "../../standards/port";
import { cleanText } from "../cells/clean-text";
import { isFilled } from "../cells/is-filled";
import { LONGEST_VALUE } from "../cells/longest-text";
import { recogniseHeader } from "../header/recognise-header";
import type { Cell } from "../sheet";
import { barNamed, headsSums } from "./sum-rows";

const LEAST_SIZES = 3;
/** cells of a line under a title alone: a size and what there is of it */
const OF_TITLED = 2;
const MOST_HEADS = 6;
/** a line of sums holds so many cells less than a bar has columns */
const FEWER = 3;
const NUMBER = /^[\d\s.,'’]*\d[\d\s.,'’]*$/;

/**
 * The last row of sums by size that stand one below another under a row of words: a size in the first cell, rising from
 * line to line, and nothing but numbers beside it. Null where the row heads none.
 *
 * @param columns columns that the table of the bars has
 */
export function sizesDown(
  cellsOf: (row: number) => readonly Cell[],
  row: number,
  filled: readonly number[],
  columns: number,
  standard: Standard,
): number | null {
  if (filled.length === 0 || filled.length > MOST_HEADS) return null;
  const heads = filled.map((column) => cellsOf(row)[column]);
  // "HA8 | 373,0" is a line, and heads none
  const isHead = heads.every(isText) && !heads.some(isNumber) && !headsBars(heads);
  if (!isHead && sizeOfTitled(cellsOf(row), filled, standard) === null) return null;
  if (row > 0 && filledOf(cellsOf(row - 1)).length > 1 && !isSumOfTexts(cellsOf(row - 1))) return null;
  // under words of sums alone a line may fill as many columns as a bar
  const isOfSums = headsSums(cellsOf(row), filled);
  const fewer = columns - FEWER;
  const most = isOfSums ? filled.length : filled.length === 1 ? Math.min(OF_TITLED, fewer) : fewer;
  let before = 0;
  let last = row;
  for (;;) {
    const cells = cellsOf(last + 1);
    const [first, ...others] = filledOf(cells);
    if (first === undefined || others.length === 0 || others.length + 1 > most) break;
    const size = cells[first];
    const bar =
      typeof size === "string" || typeof size === "number"
        ? (barNamed(size, standard) ?? barNamed(`Ø${size}`, standard))
        : null;
    if (bar === null || !(bar.diameter > before) || !others.every((column) => isNumber(cells[column]))) break;
    before = bar.diameter;
    last += 1;
  }
  return last - row < LEAST_SIZES ? null : last;
}

/** "Summary | Ø6 | 0.222 | 79.92": the column of the size in a first line that has the title before it; null in any other. */
export function sizeOfTitled(
  cells: readonly Cell[],
  filled: readonly number[],
  standard: Standard,
): number | null {
  const [title, size, ...others] = filled;
  if (title === undefined || size === undefined || others.length === 0) return null;
  const [words, named] = [cells[title], cells[size]];
  const isTitled = isText(words) && !/\d/.test(words) && isText(named) && barNamed(named, standard) !== null;
  return isTitled && others.every((column) => isNumber(cells[column])) ? size : null;
}

/** Words of a list of bars: a mark, a shape, numbers in each, or how many of which length. */
function headsBars(heads: readonly string[]): boolean {
  const kinds = new Set(heads.map((cell) => recogniseHeader(cell)?.kind));
  const isOfBars = (["mark", "shape", "each", "members"] as const).some((kind) => kinds.has(kind));
  return isOfBars || (kinds.has("length") && kinds.has("total"));
}

function isText(cell: Cell | undefined): cell is string {
  return typeof cell === "string";
}

/** "TOTAL | 4237": words and one number. */
function isSumOfTexts(cells: readonly Cell[]): boolean {
  const filled = filledOf(cells);
  return filled.filter((column) => isNumber(cells[column])).length <= 1 && filled.length <= LEAST_SIZES;
}

function filledOf(cells: readonly Cell[]): number[] {
  return cells.flatMap((_, column) => (isFilled(cells, column) ? [column] : []));
}

function isNumber(cell: Cell | undefined): boolean {
  if (typeof cell !== "string") return typeof cell === "number";
  return cell.length <= LONGEST_VALUE && NUMBER.test(cleanText(cell));
}
