import { type Cell, isCellError, type Sheet } from "../../../core/schedule";

/** True where two readings of a sheet hold the same cells at the same places. */
export function sameCells(one: Sheet | null, other: Sheet | null): boolean {
  if (one === null || other === null) return one === other;
  const isSameRange =
    one.name === other.name &&
    one.top === other.top &&
    one.left === other.left &&
    one.rowCount === other.rowCount &&
    one.columnCount === other.columnCount;
  if (!isSameRange) return false;
  for (let row = 0; row < one.rowCount; row += 1) {
    for (let column = 0; column < one.columnCount; column += 1) {
      if (plain(one.cell(row, column)) !== plain(other.cell(row, column))) return false;
    }
  }
  return true;
}

const plain = (cell: Cell): Exclude<Cell, object> | null => (isCellError(cell) ? cell.error : cell);
