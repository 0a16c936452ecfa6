import type { Standard } from "../../standards/port";
import { isFilled } from "../cells/is-filled";
import { LONGEST_VALUE } from "../cells/longest-text";
import { beginsWithWord, plainWords } from "../cells/row-words";
import { ROUND_STEEL } from "../evidence/evidence.data";
import { recogniseHeader } from "../header/recognise-header";
import type { Cell } from "../sheet";
import { filledColumns } from "./row-cells";
import { sizesInRow } from "./sum-rows";

const LEAST_SIZES = 3;
/** more than count, size and length of a bar can be */
const SURE_SIZES = 5;
/** bars, metres, kg/m, mass, mass with waste, price */
const MOST_LINES = 6;
const DIGIT = /\d/;
const AMOUNT = /^[\d\s.,'\u2019]*\d[\d\s.,'\u2019]*$/;

/**
 * Numbers, each more than the one before, beside a word for sizes, as "\u00d8 | 8 | 10 | 12"; or beside any word many that
 * are sizes of bars, and few before a word for their total: no bar at first sight.
 */
export function mayListSizes(cells: readonly Cell[]): boolean {
  const words: string[] = [];
  let [before, rising, behind] = [0, 0, ""];
  let areNominal = true;
  for (let column = 0; column < cells.length; column += 1) {
    const cell = cells[column] ?? null;
    if (cell === null || cell === "") continue;
    if (typeof cell === "string") {
      if (rising >= LEAST_SIZES && DIGIT.test(cell)) break;
      if (DIGIT.test(cell) || (rising === 0 ? words.length > 0 : rising < LEAST_SIZES)) return false;
      words.push(cell);
      if (rising > 0) behind = cell;
    } else if (behind !== "") break;
    else if (!(typeof cell === "number" && cell > before)) return false;
    else {
      before = cell;
      rising += 1;
      areNominal &&= ROUND_STEEL.value.diameters.includes(cell);
    }
  }
  if (rising < LEAST_SIZES || words.length === 0) return false;
  if (words.some(saysSizes)) return true;
  return areNominal && (rising >= SURE_SIZES || beginsWithWord("total", plainWords(behind)));
}

/** A bar of 8 mm, ten pieces, 12 m may stand behind the mark "A". */
function saysSizes(words: string): boolean {
  return recogniseHeader(words)?.kind === "size";
}

/** Few sizes behind a word that names none, and no line of sums below: as likely the figures of one bar. */
export function mayBeBar(
  cells: readonly Cell[],
  sizes: readonly { readonly column: number }[],
  below: readonly Cell[],
): boolean {
  const words = cells.find((cell) => typeof cell === "string" && cell.trim() !== "");
  if (sizes.length >= SURE_SIZES || typeof words !== "string" || saysSizes(words)) return false;
  return !isLineUnder(below, new Set(sizes.map(({ column }) => column)));
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
    if (under !== null || isAmountInUnits(cells)) left.add(row);
  }
  return left.size === 0 ? cellsOf : (row) => (left.has(row) ? NOTHING : cellsOf(row));
}

const NOTHING: readonly Cell[] = [];
const SIZE = /^[\u00f8\u00d8\u2300\u03a6\u03c6]?\s?\d{1,2}(?:\s?mm)?$/u;
const UNIT = /^(?:kgs?|t|tons?|tonnes?|lbs?|m|ft)\.?$/i;

/** "\u00d812 | 345.6 | m | 306.9 | kg": a size, and numbers with their units in cells of their own. */
function isAmountInUnits(cells: readonly Cell[]): boolean {
  const [first, ...others] = filledColumns(cells).map((column) => cells[column] as Cell);
  if (typeof first !== "string" || others.length < 2 || !SIZE.test(first.trim())) return false;
  const units = others.filter((cell) => typeof cell === "string" && UNIT.test(cell.trim()));
  const numbers = others.filter(isAmount);
  return units.length > 0 && numbers.length > 0 && units.length + numbers.length === others.length;
}

/** Columns of a row of sizes with words before them; null for any other row. */
function sizesAcross(cells: readonly Cell[], standard: Standard): ReadonlySet<number> | null {
  const filled = filledColumns(cells);
  const [first, ...others] = filled;
  const words = cells[first ?? -1];
  if (others.length < LEAST_SIZES || typeof words !== "string" || DIGIT.test(words)) return null;
  const sizes = sizesInRow(cells, filled, standard);
  if (sizes === null) return null;
  const isSure = saysSizes(words) || sizes.length >= SURE_SIZES || sizes.some(({ size }) => /\D/.test(size));
  return isSure ? new Set(sizes.map(({ column }) => column)) : null;
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
