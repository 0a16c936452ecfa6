import { BooleanNumber, type Worksheet } from "@univerjs/core";
import type { AddedCell, AddedSheet } from "../../ooxml/added-sheet";
import type { GridSheetNow } from "./book-changes";

const PX_PER_CHARACTER = 7;
const PADDING = 5;

/** A sheet that the pane added to the grid, as the file layer writes it: values, formulas, bold, widths. */
export function addedSheet(name: string, now: GridSheetNow, worksheet: Worksheet): AddedSheet {
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
    const style = worksheet.getComposedCellStyle(row, column);
    put(row, column, {
      value: now.valueAt(row, column),
      ...(formula !== null && { formula }),
      ...(fills !== null && { fills }),
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
  return { name, widths, frozenRows: 0, rows };
}
