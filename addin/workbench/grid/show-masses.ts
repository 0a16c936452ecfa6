import { CellValueType, InterceptorEffectEnum } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import type { Grid } from "./create-grid";
import type { FormulaResult } from "./engine-link";

/** behind the grid's own formats, before the sign of decimals is put in */
const BEHIND_FORMATS = -0.4;
const OF_OURS = /^=\s*BAR\./i;

/** Results of masses by the cell that their formula stands in: those that fill one cell, and those that fill more. */
interface Masses {
  readonly cells: Map<string, FormulaResult>;
  readonly blocks: Map<string, FormulaResult>;
}

/**
 * Masses that a BAR function answers are shown as schedules write them, in cells that have no format of their
 * own. The cells hold them whole, and nothing of it is kept in a file.
 */
export function showMasses(grid: Grid, decimal: string): void {
  const bySheet = new Map<string, Masses>();
  grid.onResults((results) => {
    for (const result of results) {
      const { book, sheet, row, column } = result.place;
      const masses = bySheet.get(`${book} ${sheet}`) ?? { cells: new Map(), blocks: new Map() };
      bySheet.set(`${book} ${sheet}`, masses);
      const key = keyOf(row, column);
      masses.cells.delete(key);
      masses.blocks.delete(key);
      const isOne = result.rows <= 1 && result.columns <= 1;
      if (result.places !== null) (isOne ? masses.cells : masses.blocks).set(key, result);
    }
  });
  const interceptors = grid.univer.__getInjector().get(SheetInterceptorService);
  interceptors.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    id: "barwright-masses",
    priority: BEHIND_FORMATS,
    effect: InterceptorEffectEnum.Value,
    handler(cell, { unitId, subUnitId, row, col, worksheet }, next) {
      const masses = bySheet.get(`${unitId} ${subUnitId}`);
      const isNumber = typeof cell?.v === "number" && cell.t !== CellValueType.BOOLEAN;
      if (masses === undefined || !isNumber) return next(cell);
      const { place, places } = resultAt(masses, row, col) ?? {};
      if (place === undefined || places == null) return next(cell);
      // what stands there now may be no formula of ours any longer
      const { f, si } = worksheet.getCellRaw(place.row, place.column) ?? {};
      if (f ? !OF_OURS.test(f) : !si) return next(cell);
      const v = Number(cell.v).toFixed(places).replace(".", decimal);
      return next({ ...cell, v, t: CellValueType.NUMBER });
    },
  });
}

const keyOf = (row: number, column: number): string => `${row} ${column}`;

/** The result that fills a cell. */
function resultAt({ cells, blocks }: Masses, row: number, column: number): FormulaResult | undefined {
  const own = cells.get(keyOf(row, column));
  if (own !== undefined) return own;
  for (const result of blocks.values()) {
    const { place, rows, columns } = result;
    const isInRows = row >= place.row && row < place.row + rows;
    if (isInRows && column >= place.column && column < place.column + columns) return result;
  }
  return undefined;
}
