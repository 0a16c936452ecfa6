import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  isDefaultFormat,
  isTextFormat,
  type Nullable,
  numfmt,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import type { Cell, Sheet } from "../../../core/schedule/sheet";

const ERRORS = new Set([
  "#VALUE!",
  "#N/A",
  "#REF!",
  "#DIV/0!",
  "#NAME?",
  "#NUM!",
  "#NULL!",
  "#SPILL!",
  "#CALC!",
]);

/** The grid's cells that hold a spilled result, by row and column. */
export type SpilledCells = Readonly<
  Record<number, Readonly<Record<number, Nullable<ICellData>>> | undefined>
>;

/** A copy of a grid sheet's used range that later edits do not reach. */
export function readSheet(
  workbook: Workbook,
  worksheet: Worksheet,
  spilled: SpilledCells,
  datesFrom1904 = false,
): Sheet {
  const box = usedRange(worksheet, spilled);
  const values: Cell[][] = [];
  const shown = new Map<number, string>();
  const dates = new Set<number>();
  const struck = new Set<number>();
  const width = box.right - box.left + 1;
  const styles = workbook.getStyles();
  for (let row = box.top; row <= box.bottom; row += 1) {
    const line: Cell[] = [];
    for (let column = box.left; column <= box.right; column += 1) {
      const cell = spilled[row]?.[column] ?? worksheet.getCellRaw(row, column);
      line.push(cellValue(cell));
      if (!cell?.s) continue;
      const style = styles.get(cell.s);
      const key = (row - box.top) * width + column - box.left;
      if (style?.st?.s === BooleanNumber.TRUE) struck.add(key);
      const pattern = style?.n?.pattern;
      if (pattern === undefined || typeof cell.v !== "number") continue;
      if (isDatePattern(pattern)) dates.add(key);
      if (isDefaultFormat(pattern) || isTextFormat(pattern)) continue;
      // by a point, whatever the sign of the place is
      const text = numfmt.format(pattern, cell.v, { throws: false });
      if (text !== "") shown.set(key, text);
    }
    values.push(line);
  }
  const hiddenRows = new Set<number>();
  for (let row = 0; row < values.length; row += 1) {
    if (worksheet.getRowManager().getRow(row + box.top)?.hd) hiddenRows.add(row);
  }
  const hiddenColumns = new Set<number>();
  for (let column = 0; column < width; column += 1) {
    if (worksheet.getColumnManager().getColumn(column + box.left)?.hd) hiddenColumns.add(column);
  }
  const key = (row: number, column: number): number => row * width + column;
  return {
    name: worksheet.getName(),
    top: box.top,
    left: box.left,
    rowCount: values.length,
    columnCount: values.length === 0 ? 0 : width,
    cell: (row, column) => values[row]?.[column] ?? null,
    shown: (row, column) => shown.get(key(row, column)),
    isDate: (row, column) => dates.has(key(row, column)),
    datesFrom1904,
    isStruckThrough: (row, column) => struck.has(key(row, column)),
    isHiddenRow: (row) => hiddenRows.has(row),
    isHiddenColumn: (column) => hiddenColumns.has(column),
    merges: worksheet.getMergeData().map((merge) => ({
      top: merge.startRow - box.top,
      left: merge.startColumn - box.left,
      bottom: merge.endRow - box.top,
      right: merge.endColumn - box.left,
    })),
  };
}

/** What a cell of the grid holds. */
export function cellValue(cell: Nullable<ICellData>): Cell {
  const value = cell?.v;
  if (value === undefined || value === null || value === "") return null;
  if (cell?.t === CellValueType.BOOLEAN) return value === 1 || value === true || value === "TRUE";
  if (typeof value === "string" && ERRORS.has(value)) return { error: value };
  return value;
}

/** Day, month or year outside quotes and brackets. */
function isDatePattern(pattern: string): boolean {
  return /[dmy]/i.test(pattern.replace(/"[^"]*"|\[[^\]]*\]|\\./g, "")) && !/^general$/i.test(pattern);
}

function usedRange(worksheet: Worksheet, spilled: SpilledCells) {
  const box = { top: Infinity, left: Infinity, bottom: -1, right: -1 };
  const include = (row: number, column: number, cell: Nullable<ICellData>): void => {
    if (cellValue(cell) === null) return;
    box.top = Math.min(box.top, row);
    box.left = Math.min(box.left, column);
    box.bottom = Math.max(box.bottom, row);
    box.right = Math.max(box.right, column);
  };
  worksheet.getCellMatrix().forValue((row, column, cell) => include(row, column, cell));
  for (const [row, line] of Object.entries(spilled)) {
    for (const [column, cell] of Object.entries(line ?? {})) include(Number(row), Number(column), cell);
  }
  return box.bottom < 0 ? { top: 0, left: 0, bottom: -1, right: -1 } : box;
}
