import { IUniverInstanceService, UniverInstanceType, type Workbook } from "@univerjs/core";
import { SheetsSelectionsService } from "@univerjs/preset-sheets-core";
import type { Grid } from "./create-grid";

/** A cell of the sheet in view, by the sheet's own row and column from 0. */
export interface SelectedCell {
  readonly book: string;
  readonly sheetId: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The cell that is selected at this moment; null before a workbook is open. */
export function selectedCell(grid: Grid): SelectedCell | null {
  const workbook = grid.api.getActiveWorkbook();
  if (!workbook) return null;
  // the grid's own getActiveCell throws beyond the sheet's last line, where the name box may lead
  const selections = grid.univer.__getInjector().get(SheetsSelectionsService).getCurrentSelections();
  const cell = selections.find(({ primary }) => primary)?.primary;
  if (!cell) return null;
  const sheet = workbook.getActiveSheet();
  return {
    book: workbook.getId(),
    sheetId: sheet.getSheetId(),
    sheet: sheet.getSheetName(),
    row: cell.actualRow,
    column: cell.actualColumn,
  };
}

/**
 * Tells of each cell that is selected, from the first on: the grid's own events of that kind begin seconds
 * after it is drawn, so its service of selections is heard itself.
 */
export function watchSelection(grid: Grid, listener: (cell: SelectedCell) => void): () => void {
  const tell = (): void => {
    const cell = selectedCell(grid);
    if (cell !== null) listener(cell);
  };
  const injector = grid.univer.__getInjector();
  let moved: { unsubscribe(): void } | undefined;
  // the service of selections stands from the first workbook on
  const opened = injector
    .get(IUniverInstanceService)
    .getCurrentTypeOfUnit$<Workbook>(UniverInstanceType.UNIVER_SHEET)
    .subscribe((book) => {
      if (book) moved ??= injector.get(SheetsSelectionsService).selectionChanged$.subscribe(tell);
    });
  const turned = grid.api.addEvent(grid.api.Event.ActiveSheetChanged, () => setTimeout(tell));
  return () => {
    opened.unsubscribe();
    moved?.unsubscribe();
    turned.dispose();
  };
}
