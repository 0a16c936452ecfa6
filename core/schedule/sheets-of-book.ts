import { cellAddress } from "./cell-address";
import type { Cell, RowElsewhere, Sheet } from "./sheet";

/** no list of bars, which would be asked for figures of another list */
const MOST_ROWS = 60;

/**
 * The sheets of a book in their order, each list with what it may ask of the others: whether it goes on with the list
 * before, and what sums and notes of it stand elsewhere. Every surface reads a sheet so.
 */
export function sheetsOfBook(read: readonly Sheet[], isList: (sheet: Sheet) => boolean): Sheet[] {
  const all: Sheet[] = [];
  for (const sheet of read) {
    const before = all.at(-1);
    const follows = before === undefined || !isList(before) ? {} : { follows: before };
    const elsewhere = () => rowsElsewhere(read, sheet.name);
    all.push(isList(sheet) ? { ...sheet, ...follows, elsewhere } : sheet);
  }
  return all;
}

/** The rows of a book's other short sheets, where a summary of this one's list or a note on it may stand. */
function rowsElsewhere(sheets: readonly Sheet[], own: string): readonly RowElsewhere[] {
  return sheets
    .filter(({ name, rowCount }) => name !== own && rowCount <= MOST_ROWS)
    .flatMap((sheet) =>
      Array.from({ length: sheet.rowCount }, (_, row) => ({
        cells: rowOf(sheet, row),
        at: (column: number) => `${sheet.name}!${cellAddress(sheet, row, column)}`,
      })),
    );
}

function rowOf(sheet: Sheet, row: number): readonly Cell[] {
  return (
    sheet.rowCells?.(row) ?? Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column))
  );
}
