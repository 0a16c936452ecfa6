/** What the grid's own commands are given as selected: whole rows, whole columns, cells; all from 0. */
export const rows = (startRow: number, endRow: number) => ({
  range: { startRow, endRow, startColumn: 0, endColumn: 19, rangeType: 1 },
});
export const columns = (startColumn: number, endColumn: number) => ({
  range: { startRow: 0, endRow: 64, startColumn, endColumn, rangeType: 2 },
});
export const cells = (startRow: number, startColumn: number, endRow = startRow, endColumn = startColumn) => ({
  range: { startRow, endRow, startColumn, endColumn },
});
