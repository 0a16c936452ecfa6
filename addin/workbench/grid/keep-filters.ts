import { ICommandService, type IRange } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import { type FilterModel, SheetsFilterService } from "@univerjs/sheets-filter";
import type { Grid } from "./create-grid";

const kept = new WeakSet<Grid>();

/**
 * Keeps a filter from taking in the row under it: the grid widens it over a total as soon as that is
 * calculated. To be called once a first workbook is open, when the grid's own listeners are there.
 */
export function keepFilters(grid: Grid): void {
  if (kept.has(grid)) return;
  kept.add(grid);
  const injector = grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const filters = injector.get(SheetsFilterService);
  let held: { readonly model: FilterModel; readonly range: IRange } | null = null;
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SetRangeValuesMutation.id) return;
    const { unitId, subUnitId } = params as { readonly unitId: string; readonly subUnitId: string };
    const model = filters.getFilterModel(unitId, subUnitId);
    const range = model?.getRange();
    held = model && range ? { model, range: { ...range } } : null;
  });
  commands.onCommandExecuted(({ id }) => {
    if (id !== SetRangeValuesMutation.id || held === null) return;
    const { model, range } = held;
    held = null;
    if (model.getRange().endRow !== range.endRow) model.setRange(range);
  });
}
