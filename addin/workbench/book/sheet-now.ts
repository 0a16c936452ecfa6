import type { ICellData, Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/preset-sheets-core";
import { type FilterModel, SheetsFilterService } from "@univerjs/sheets-filter";
import type { FilteredColumn, SheetFilter } from "../../workbook/sheet-changes";
import type { Grid } from "../grid/create-grid";
import { cellValue } from "../grid/read-sheet";
import type { GridSheetNow } from "./book-changes";
import type { GridFrameNow } from "./sheet-differences";

export type OpenBook = NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>;

/** The cells of a sheet as they stand in the grid; null where there is no such sheet. */
export function sheetNow(grid: Grid, open: OpenBook, sheetId: string): GridSheetNow | null {
  const sheet = open.getSheetBySheetId(sheetId);
  if (sheet === null) return null;
  const model = grid.univer.__getInjector().get(FormulaDataModel);
  const spilled = model.getArrayFormulaCellData()?.[open.getId()]?.[sheetId] ?? {};
  const ranges = model.getArrayFormulaRange()?.[open.getId()]?.[sheetId] ?? {};
  const worksheet = sheet.getSheet();
  let cells: GridSheetNow["cells"] | undefined;
  return {
    get cells() {
      cells ??= cellsOf(worksheet);
      return cells;
    },
    formulaAt(row, column) {
      const cell = worksheet.getCellRaw(row, column);
      if (!cell?.f && !cell?.si) return null;
      return sheet.getRange(row, column).getFormula().replace(/^=/, "");
    },
    valueAt: (row, column) => cellValue(spilled[row]?.[column] ?? worksheet.getCellRaw(row, column)),
    spillAt(row, column) {
      const range = ranges[row]?.[column];
      if (!range) return null;
      const rows = range.endRow - range.startRow + 1;
      const columns = range.endColumn - range.startColumn + 1;
      return rows * columns > 1 ? { rows, columns } : null;
    },
  };
}

function cellsOf(worksheet: Worksheet): GridSheetNow["cells"] {
  const cells = new Map<number, Map<number, ICellData>>();
  worksheet.getCellMatrix().forValue((row, column, cell): undefined => {
    if (!cell) return;
    const line = cells.get(row) ?? new Map<number, ICellData>();
    cells.set(row, line.set(column, cell));
  });
  return cells;
}

/** What stands about a sheet's cells: sizes, hidden lines, merged cells, frozen lines, filter. */
export function frameNow(grid: Grid, open: OpenBook, sheetId: string): GridFrameNow {
  const worksheet = open.getSheetBySheetId(sheetId)?.getSheet();
  if (worksheet === undefined) throw new Error(`the grid has no sheet ${sheetId}`);
  const config = worksheet.getConfig();
  const { xSplit, ySplit } = worksheet.getFreeze();
  const filter = filterModel(grid, open, sheetId);
  return {
    rowData: config.rowData,
    columnData: config.columnData,
    merges: worksheet.getMergeData().map(({ startRow, startColumn, endRow, endColumn }) => ({
      top: startRow,
      left: startColumn,
      bottom: endRow,
      right: endColumn,
    })),
    frozen: { rows: Math.max(0, ySplit), columns: Math.max(0, xSplit) },
    filteredOut: filter?.filteredOutRows ?? new Set<number>(),
    filter: filter === null ? null : sheetFilter(filter),
  };
}

function filterModel(grid: Grid, open: OpenBook, sheetId: string): FilterModel | null {
  return grid.univer.__getInjector().get(SheetsFilterService).getFilterModel(open.getId(), sheetId) ?? null;
}

function sheetFilter(model: FilterModel): SheetFilter {
  const { ref, filterColumns = [] } = model.serialize();
  return {
    range: { top: ref.startRow, left: ref.startColumn, bottom: ref.endRow, right: ref.endColumn },
    columns: filterColumns.flatMap(({ colId, filters, customFilters }): FilteredColumn[] => {
      const column = colId - ref.startColumn;
      if (customFilters !== undefined) {
        const tests = customFilters.customFilters.map(({ val, operator }) => ({
          value: String(val),
          ...(operator !== undefined && { operator: String(operator) }),
        }));
        return [{ column, custom: { and: customFilters.and === 1, tests } }];
      }
      if (filters === undefined) return [];
      return [{ column, values: filters.filters ?? [], ...(filters.blank && { blank: true }) }];
    }),
  };
}
