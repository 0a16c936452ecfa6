import { BooleanNumber, type ICellData } from "@univerjs/core";
import type { SheetContent } from "../../pane/workbook-port";
import { gridValue } from "../book/to-grid-data";

/** blank rows kept under what a sheet holds */
export const SPARE_ROWS = 60;
const FEWEST_COLUMNS = 20;
const PX_PER_CHARACTER = 7;
const PADDING = 5;

/** The content of a new sheet as the grid takes it: a full block of cells, and the room about it. */
export function gridCells({ rows, widths = [] }: SheetContent) {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const cells = rows.map((row) =>
    Array.from({ length: columns }, (_, column): ICellData => {
      const { value = null, formula, bold } = row[column] ?? {};
      const content = formula === undefined ? gridValue(value) : { f: `=${formula}` };
      return { ...content, ...(bold === true && { s: { bl: BooleanNumber.TRUE } }) };
    }),
  );
  return {
    cells,
    rowCount: rows.length + SPARE_ROWS,
    columnCount: Math.max(columns, FEWEST_COLUMNS),
    columnData: Object.fromEntries(
      widths.map((width, column) => [column, { w: width * PX_PER_CHARACTER + PADDING }]),
    ),
    hasFormula: rows.some((row) => row.some(({ formula }) => formula !== undefined)),
  };
}
