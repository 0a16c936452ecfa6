import type { ICellData, Nullable } from "@univerjs/core";
import { AFTER_CELL_EDIT, type ISheetLocation, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { tablesThere } from "../book/tables-there";
import { withoutTables } from "../book/without-tables";
import type { GridFile } from "../grid-file";
import type { Grid } from "./create-grid";

type Place = Pick<ISheetLocation, "worksheet" | "row" | "col">;
type Shown = Pick<GridFile, "opened">;

/** before the grid's own reading of what was typed */
const FIRST = 900;

/** References to the file's tables may be typed; the cells hold the ranges that they mean, which the grid can follow. */
export function takeTables(grid: Grid, shown: Shown): void {
  const { writeCellInterceptor } = grid.univer.__getInjector().get(SheetInterceptorService);
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, place, next) => next(typed(cell, place, shown)),
  });
}

function typed<Cell extends ICellData>(
  cell: Nullable<Cell>,
  place: Place,
  { opened }: Shown,
): Nullable<Cell> {
  if (!cell?.f || opened === null) return cell;
  const { worksheet, row, col } = place;
  const at = { sheet: worksheet.getName(), row, column: col };
  return { ...cell, f: withoutTables(cell.f, tablesThere(opened), at) };
}
