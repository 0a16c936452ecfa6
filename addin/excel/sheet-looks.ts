import { FLAG_FILLS } from "../workbook/flag-fills";
import type { SheetCell } from "../workbook/workbook-port";

const LINK = "#0B5394";
const SHADE = "#E9ECEF";
const RULE = "#C8CDD2";

/** Paints the cells of a new sheet, each run of alike cells in a column at once; wrapped rows fit their words. */
export function applyLooks(sheet: Excel.Worksheet, cells: readonly (readonly SheetCell[])[]): void {
  const columns = cells[0]?.length ?? 0;
  for (let column = 0; column < columns; column += 1) {
    let first = 0;
    for (let row = 1; row <= cells.length; row += 1) {
      const cell = cells[first]![column]!;
      const next = cells[row]?.[column];
      if (next !== undefined && lookKey(next) === lookKey(cell)) continue;
      if (lookKey(cell) !== PLAIN) {
        const range = sheet.getRangeByIndexes(first, column, row - first, 1).untrack();
        paint(range.format, cell, row - first);
      }
      first = row;
    }
  }
  if (cells.some((row) => row.some(({ wrap }) => wrap === true))) {
    sheet.getRangeByIndexes(0, 0, cells.length, columns).untrack().format.autofitRows();
  }
}

const lookKey = ({ bold, wrap, right, ruled, shade, flag, link }: SheetCell): string =>
  [bold, wrap, right, ruled, shade, flag, link !== undefined].map((each) => each || "").join();
const PLAIN = lookKey({ value: null });

function paint(format: Excel.RangeFormat, cell: SheetCell, rows: number): void {
  const { bold, wrap, right, ruled, shade, flag, link } = cell;
  const fill = flag === undefined ? (shade === true ? SHADE : null) : FLAG_FILLS[flag];
  if (wrap === true || ruled === true || flag !== undefined) format.verticalAlignment = "Top";
  if (wrap === true) format.wrapText = true;
  if (right === true) format.horizontalAlignment = "Right";
  if (bold === true) format.font.bold = true;
  if (fill !== null) format.fill.color = fill;
  if (flag !== undefined) format.font.color = "#000000";
  if (link !== undefined) {
    format.font.color = LINK;
    format.font.underline = "Single";
  }
  if (ruled === true) {
    // a single row has nothing inside
    for (const edge of rows > 1 ? (["EdgeBottom", "InsideHorizontal"] as const) : (["EdgeBottom"] as const)) {
      const line = format.borders.getItem(edge);
      line.style = "Continuous";
      line.color = RULE;
    }
  }
}
