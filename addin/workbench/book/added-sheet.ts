import { BooleanNumber, type Worksheet } from "@univerjs/core";
import type { AddedCell, AddedSheet } from "../../workbook/added-sheet";
import { CHART_WORDS } from "../../workbook/stacked-bars";
import type { SheetCell, SheetContent } from "../../workbook/workbook-port";
import { addedContent } from "./added-content";
import type { GridSheetNow } from "./book-changes";

const PX_PER_CHARACTER = 7;
const PADDING = 5;

/**
 * A sheet that the pane added to the grid, as the file layer writes it: values and formulas as they stand
 * now, looks where the cell is as it was written, the chart where its table is.
 */
export function addedSheet(name: string, now: GridSheetNow, worksheet: Worksheet): AddedSheet {
  const content = addedContent(worksheet);
  const rows: AddedCell[][] = [];
  const put = (row: number, column: number, cell: AddedCell): void => {
    while (rows.length <= row) rows.push([]);
    const line = rows[row] as AddedCell[];
    while (line.length < column) line.push({ value: null });
    line[column] = cell;
  };
  const places = [...now.cells]
    .flatMap(([row, line]) => [...line.keys()].map((column) => ({ row, column })))
    .sort((a, b) => a.row - b.row || a.column - b.column);
  for (const { row, column } of places) {
    const formula = now.formulaAt(row, column);
    const fills = now.spillAt(row, column);
    if (now.valueAt(row, column) === CHART_WORDS) continue;
    const style = worksheet.getComposedCellStyle(row, column);
    put(row, column, {
      value: now.valueAt(row, column),
      ...(formula !== null && { formula }),
      ...(fills !== null && { fills }),
      ...looksOf(content?.rows[row]?.[column], now, row, column),
      ...(style?.bl === BooleanNumber.TRUE && { bold: true }),
    });
  }
  // what a formula fills stands in no cell of the grid
  for (const { row, column } of places) {
    const fills = now.spillAt(row, column);
    for (let r = row; r < row + (fills?.rows ?? 0); r += 1) {
      for (let c = column; c < column + (fills?.columns ?? 0); c += 1) {
        if (r !== row || c !== column) put(r, c, { value: now.valueAt(r, c) });
      }
    }
  }
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(1, Math.round((worksheet.getColumnWidth(column) - PADDING) / PX_PER_CHARACTER)),
  );
  const { frozenRows = 0, chart, print } = content ?? {};
  const isTableThere = chart !== undefined && holdsTable(content, now);
  return {
    name,
    widths,
    frozenRows,
    rows,
    ...(isTableThere && { chart }),
    // pages are cut about the chart
    ...(print !== undefined && (chart === undefined || isTableThere) && { print }),
  };
}

function looksOf(written: SheetCell | undefined, now: GridSheetNow, row: number, column: number) {
  if (written === undefined) return {};
  const { value, formula, ...looks } = written;
  const isSame = formula === undefined ? now.valueAt(row, column) === value : true;
  return isSame ? looks : {};
}

/** The head of the chart's table and its last name stand where they were written: no row was put in above. */
function holdsTable(content: SheetContent | null, now: GridSheetNow): boolean {
  const { chart, rows } = content ?? {};
  if (chart === undefined || rows === undefined) return false;
  const { top, left, rows: categories, columns } = chart.table;
  const places = Array.from({ length: columns + 1 }, (_, index) => ({ row: top, column: left + index }));
  places.push({ row: top + categories, column: left });
  return places.every(({ row, column }) => now.valueAt(row, column) === (rows[row]?.[column]?.value ?? null));
}
