import { ICommandService } from "@univerjs/core";
import {
  SetTriggerFormulaCalculationStartMutation,
  SetWorksheetColumnCountMutation,
  SetWorksheetRowCountMutation,
} from "@univerjs/preset-sheets-core";
import { LAST_COLUMN, LAST_ROW } from "../../workbook/cell-address";
import type { Grid } from "./create-grid";
import { watchSelection } from "./watch-selection";

/** Lines that are added at a time, and how near to the end that is done. */
const MORE_ROWS = 200;
const MORE_COLUMNS = 26;
const NEAR_ROWS = 20;
const NEAR_COLUMNS = 4;
/** More than a column of all rows or a row of all columns; all of both would take the page's memory. */
const MOST_CELLS = 40_000_000;

/** Lets sheets of the grid grow: with the cell that is selected, and with results that need more room. */
export function growSheets(grid: Grid): void {
  const commands = grid.univer.__getInjector().get(ICommandService);
  /** true where the sheet had less than what is wanted; the change is none of the user's, to be undone */
  const grow = (sheetId: string, rows: number, columns: number): boolean => {
    const book = grid.api.getActiveWorkbook();
    const sheet = book?.getSheetBySheetId(sheetId);
    if (!book || !sheet) return false;
    const place = { unitId: book.getId(), subUnitId: sheetId };
    const rowCount = Math.min(rows, LAST_ROW + 1);
    const columnCount = Math.min(columns, LAST_COLUMN + 1);
    if (rowCount * columnCount > MOST_CELLS) return false;
    const isShort = rowCount > sheet.getMaxRows();
    const isNarrow = columnCount > sheet.getMaxColumns();
    if (isShort) commands.syncExecuteCommand(SetWorksheetRowCountMutation.id, { ...place, rowCount });
    if (isNarrow) commands.syncExecuteCommand(SetWorksheetColumnCountMutation.id, { ...place, columnCount });
    return isShort || isNarrow;
  };
  watchSelection(grid, ({ sheetId, row, column }) => {
    const sheet = grid.api.getActiveWorkbook()?.getSheetBySheetId(sheetId);
    if (!sheet) return;
    const rows = sheet.getMaxRows();
    const columns = sheet.getMaxColumns();
    grow(
      sheetId,
      row >= rows - NEAR_ROWS ? Math.max(rows, row) + MORE_ROWS : rows,
      column >= columns - NEAR_COLUMNS ? Math.max(columns, column) + MORE_COLUMNS : columns,
    );
  });
  grid.onResults((results) => {
    let hasGrown = false;
    for (const { place, rows, columns } of results) {
      if (place.book !== grid.api.getActiveWorkbook()?.getId()) continue;
      hasGrown = grow(place.sheet, place.row + rows, place.column + columns) || hasGrown;
    }
    // a result that found no room is calculated again
    if (hasGrown) {
      void commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, {
        commands: [],
        forceCalculation: true,
      });
    }
  });
}
