import { CellValueType, type ICellData, InterceptorEffectEnum, type Nullable, numfmt } from "@univerjs/core";
import {
  AFTER_CELL_EDIT,
  BEFORE_CELL_EDIT,
  INTERCEPTOR_POINT,
  SheetInterceptorService,
  SheetsNumfmtCellContentController,
} from "@univerjs/preset-sheets-core";
import type { Grid } from "./create-grid";
import { localNumber, type NumberSigns, pointNumber } from "./local-number";

/** before the grid's own reading of what was typed */
const FIRST = 1_000;
/** behind the grid's own formats */
const LAST = -0.5;

/** Where the comma is the decimal sign, numbers are typed and shown by it; the cells hold them as ever. */
export function takeDecimalComma(grid: Grid, signs: NumberSigns): void {
  const injector = grid.univer.__getInjector();
  const interceptors = injector.get(SheetInterceptorService);
  injector.get(SheetsNumfmtCellContentController).setNumfmtLocal(formatLocale());
  interceptors.writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, _place, next) => next(typed(cell, signs)),
  });
  interceptors.writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: LAST,
    handler: (cell, _place, next) => next(shown(cell, signs)),
  });
  interceptors.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: LAST,
    effect: InterceptorEffectEnum.Value,
    handler: (cell, _place, next) => next(shown(cell, signs)),
  });
}

function typed<Cell extends ICellData>(cell: Nullable<Cell>, signs: NumberSigns): Nullable<Cell> {
  if (!cell || typeof cell.v !== "string" || cell.f || cell.t === CellValueType.FORCE_STRING) return cell;
  const point = pointNumber(cell.v, signs);
  return point === null ? cell : { ...cell, v: point };
}

function shown<Cell extends ICellData>(cell: Nullable<Cell>, signs: NumberSigns): Nullable<Cell> {
  return typeof cell?.v === "number" && !Number.isInteger(cell.v) && cell.t !== CellValueType.STRING
    ? { ...cell, v: localNumber(cell.v, signs) }
    : cell;
}

/** The place's own formats, or those of another with a comma where the grid has none of it. */
function formatLocale(): Parameters<SheetsNumfmtCellContentController["setNumfmtLocal"]>[0] {
  const [language = ""] = navigator.language.split("-");
  const locale = language as ReturnType<typeof formatLocale>;
  try {
    if (numfmt.format("0.0", 1.5, { locale }) === "1,5") return locale;
  } catch {
    // not known to the grid
  }
  return "de";
}
