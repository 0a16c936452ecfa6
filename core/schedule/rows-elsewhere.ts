import type { Cell, Sheet } from "./sheet";

/** no list of bars, which would be asked for figures of another list */
const MOST_ROWS = 60;

/** The rows of a book's other short sheets, where a summary of this one's list may stand. */
export function rowsElsewhere(sheets: readonly Sheet[], own: string): readonly (readonly Cell[])[] {
  return sheets
    .filter(({ name, rowCount }) => name !== own && rowCount <= MOST_ROWS)
    .flatMap((sheet) => Array.from({ length: sheet.rowCount }, (_, row) => rowOf(sheet, row)));
}

function rowOf(sheet: Sheet, row: number): readonly Cell[] {
  return (
    sheet.rowCells?.(row) ?? Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column))
  );
}
