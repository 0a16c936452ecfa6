import {
  type ICellData,
  IUniverInstanceService,
  type IWorkbookData,
  UniverInstanceType,
} from "@univerjs/core";
import type { Grid } from "./create-grid";

/** Longest wait for a calculation, ms. */
const PATIENCE = 60_000;

/**
 * Resolves when the worker's next results stand in the cells, however late the worker begins.
 *
 * @param book id of the workbook whose results are waited for, if it is not closed before; any by default
 */
export function nextCalculation(grid: Grid, book?: string): Promise<void> {
  return new Promise((resolve) => {
    const done = (): void => {
      clearTimeout(timer);
      heard.dispose();
      closed.unsubscribe();
      resolve();
    };
    const heard = grid.api.getFormula().calculationResultApplied((result) => {
      if (book === undefined || result.unitData[book] !== undefined) done();
    });
    const closed = grid.univer
      .__getInjector()
      .get(IUniverInstanceService)
      .getTypeOfUnitDisposed$(UniverInstanceType.UNIVER_SHEET)
      .subscribe((unit) => {
        if (unit.getUnitId() === book) done();
      });
    const timer = setTimeout(done, PATIENCE);
  });
}

/** Resolves when the grid has calculated the workbook it was given, or has nothing to calculate. */
export function firstCalculation(grid: Grid, { id, sheets }: IWorkbookData): Promise<void> {
  const hasFormula = Object.values(sheets).some(({ cellData = {} }) =>
    Object.values(cellData as Record<number, Record<number, ICellData>>).some((line) =>
      Object.values(line).some(({ f }) => Boolean(f)),
    ),
  );
  return hasFormula ? nextCalculation(grid, id) : Promise.resolve();
}
