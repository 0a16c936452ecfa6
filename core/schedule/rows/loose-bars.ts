import type { Standard } from "../../standards/port";
import type { RowClass, TableReading } from "../bar-row";
import { type SizeCell, sizeCellReader } from "../cells/read-size-cell";
import { valueReader } from "../evidence/read-value";
import type { Cell } from "../sheet";
import type { RowReason } from "./row-reason";

/** one row may be a remark that speaks of bars */
const FEWEST = 2;
/** mm, the thinnest bar of the standards is of 4 */
const THINNEST = 4;

/**
 * Rows above the heads of the first table that look like bars are told as unread: nobody may take it that they were checked. A size with its
 * count in one cell beside a number does; so do sizes beside a count and another number, where a mark stands beside them
 * or a size stands again, which no sums by size have.
 */
export function tellLooseBars(
  classes: RowClass[],
  reasons: RowReason[],
  cellsOf: (row: number) => readonly Cell[],
  tables: readonly TableReading[],
  standard: Standard,
): void {
  const looksOf = looksReader(standard);
  const first = tables.length === 0 ? 0 : Math.min(...tables.map(({ headerTop }) => headerTop));
  const like: { readonly row: number; readonly size: string; readonly isSure: boolean }[] = [];
  for (let row = 0; row < first; row += 1) {
    const looks = classes[row] === "note" ? looksOf(cellsOf(row)) : null;
    if (looks !== null) like.push({ row, ...looks });
  }
  const isAgain = new Set(like.map(({ size }) => size)).size < like.length;
  const bars = like.filter(({ isSure }) => isSure || isAgain);
  if (bars.length < FEWEST) return;
  for (const { row } of bars) {
    classes[row] = "unread";
    reasons[row] = { code: "bar-without-heads" };
  }
}

function looksReader(standard: Standard) {
  const readSize = sizeCellReader(standard, false);
  const valueIn = valueReader(false);
  return (cells: readonly Cell[]): { readonly size: string; readonly isSure: boolean } | null => {
    const sizes = cells.map((cell) =>
      typeof cell === "string" && /\D/.test(cell) ? readSize(cell, "") : null,
    );
    const counted = sizes.findIndex((one) => one?.is === "size" && one.count !== null);
    // "B1" is a mark, though B may be a type of bar
    const isThick = (one: SizeCell | null): boolean =>
      one?.is === "size" && (one.size?.diameter ?? 0) >= THINNEST;
    const at = counted < 0 ? sizes.findIndex(isThick) : counted;
    const named = sizes[at];
    if (named == null) return null;
    const numbers = cells.flatMap((cell, column) => {
      const { kind, value } = valueIn(cell);
      return column !== at && (kind === "number" || kind === "feetInches") && value > 0 ? [value] : [];
    });
    const size = String(cells[at]).trim();
    if (named.count !== null) return numbers.length > 0 ? { size, isSure: true } : null;
    const isCounted = numbers.length > 1 && numbers.some((value) => Number.isInteger(value));
    if (!isCounted) return null;
    const isMarked = cells
      .slice(0, at)
      .some((cell) => typeof cell === "string" && /^\p{L}+[\s.-]?\d+\p{L}?$/u.test(cell.trim()));
    return { size, isSure: isMarked };
  };
}
