import { cleanText } from "../cells/clean-text";
import type { CommaUse } from "../cells/read-number-text";
import type { HeaderBlock } from "../header/header-blocks";
import { recogniseHeader } from "../header/recognise-header";
import { readHeading } from "../rows/read-heading";
import type { Cell } from "../sheet";
import { numberIn } from "./column-sample";

const WITHIN = 0.01;
/** sums of one member and of all that differ by less tell nothing */
const APART = 0.03;

/**
 * Whose bars a bare count counts where headings give several members and no column does: "each" where sums of the sheet
 * are so many times those of one member, "total" where its last sum is that of the rows as they stand, "open" where no
 * sum tells; null where no heading gives members, or the head of the count says whose it is.
 */
export function countUnderHeadings(
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  comma: CommaUse,
  /** members that the title gives for the whole list */
  ofList: number | null = null,
): "each" | "total" | "open" | null {
  const total = block.columns.find(({ kind }) => kind === "total");
  if (total === undefined || total.corrected || recogniseHeader(total.header)?.weak !== true) return null;
  if (block.columns.some(({ kind }) => kind === "members" || kind === "each")) return null;
  const summed = summedColumns(block);
  const sums = { one: 0, all: 0 };
  let members = ofList ?? 1;
  let most = members;
  let one = 0;
  let below: (readonly Cell[])[] = [];
  for (const cells of rows) {
    const texts = cells.filter((cell) => typeof cell === "string" && cell.trim() !== "");
    const filled = cells.filter((cell) => cell !== null && cell !== undefined && cell !== "").length;
    if (filled === 1 && texts.length === 1) {
      members = readHeading(cleanText(String(texts[0]))).members ?? ofList ?? 1;
      most = Math.max(most, members);
      one = 0;
      continue;
    }
    const count = numberIn(cells[total.column], comma);
    const amount = summed.reduce((sum, column) => sum + (numberIn(cells[column], comma) ?? 0), 0);
    if (count !== null && count > 0 && isBar(block, cells, amount / count, comma)) {
      one += amount;
      sums.one += amount;
      sums.all += amount * members;
      below = [];
      continue;
    }
    const numbers = cells.map((cell) => numberIn(cell, comma)).filter((value) => value !== null && value > 0);
    if (members > 1 && isTimes(numbers as number[], one, members)) return "each";
    if (numbers.length > 0) below.push(cells);
  }
  if (most < 2) return null;
  if (ofList !== null && isTimesBelow(below, ofList, comma)) return "each";
  if (sums.one <= 0 || sums.all / sums.one < 1 + APART) return "open";
  const found = sumsBelow(below, summed, comma);
  if (found.some((value) => isNear(value, sums.all))) return "each";
  return found.some((value) => isNear(value, sums.one)) ? "total" : "open";
}

/** What stands below the last bar: each number, those of a line under the summed columns together, and each column. */
function sumsBelow(
  rows: readonly (readonly Cell[])[],
  summed: readonly number[],
  comma: CommaUse,
): readonly number[] {
  const columns = new Map<number, number>();
  const found: number[] = [];
  for (const cells of rows) {
    let across = 0;
    cells.forEach((cell, column) => {
      const value = numberIn(cell, comma);
      if (value === null || value <= 0) return;
      found.push(value);
      columns.set(column, (columns.get(column) ?? 0) + value);
      if (summed.includes(column)) across += value;
    });
    found.push(across, ...columns.values());
  }
  return found;
}

/** Columns whose figures a list adds up. */
function summedColumns({ columns, bySize }: HeaderBlock): readonly number[] {
  const named =
    columns.find(({ kind }) => kind === "mass") ?? columns.find(({ kind }) => kind === "totalLength");
  return named === undefined ? bySize.map(({ column }) => column) : [named.column];
}

/** A length stands in the row, and lengths that are summed follow from it. */
function isBar({ columns }: HeaderBlock, cells: readonly Cell[], ofOne: number, comma: CommaUse): boolean {
  const at = (kind: string) => columns.find((one) => one.kind === kind)?.column ?? -1;
  const cell = cells[at("length")];
  const length = numberIn(cell, comma) ?? 0;
  const sumsLengths = at("mass") < 0;
  // feet and inches are no number, and a length all the same
  if (!sumsLengths) return length > 0 || (typeof cell === "string" && /\d/.test(cell));
  return length > 0 && (isNear(length, ofOne) || isNear(ofOne, length));
}

/** A sum is so many times what the rows of one member make, or another sum of its line. */
function isTimes(numbers: readonly number[], one: number, members: number): boolean {
  return numbers.some((value) => [one, ...numbers].some((part) => part > 0 && isNear(value, part * members)));
}

/** A sum below is so many times another: that of one member, and that of all. */
function isTimesBelow(rows: readonly (readonly Cell[])[], members: number, comma: CommaUse): boolean {
  const sums = rows
    .flatMap((cells) => cells.map((cell) => numberIn(cell, comma) ?? 0))
    .filter((sum) => sum > members);
  return sums.some((sum) => sums.some((one) => Math.abs(sum / (one * members) - 1) < EXACTLY));
}

const EXACTLY = 0.001;

/** As it stands, or in another unit: kg and t, cm and m. */
function isNear(value: number, expected: number): boolean {
  return [1, 10, 100, 1000].some((factor) => Math.abs((value * factor) / expected - 1) <= WITHIN);
}
