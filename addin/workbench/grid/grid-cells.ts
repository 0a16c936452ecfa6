import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type ICellData,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import { FLAG_FILLS } from "../../workbook/flag-fills";
import { CHART_WORDS } from "../../workbook/stacked-bars";
import type { SheetCell, SheetContent } from "../../workbook/workbook-port";
import { gridValue } from "../book/to-grid-data";

/** blank rows kept under what a sheet holds */
export const SPARE_ROWS = 60;
const FEWEST_COLUMNS = 20;
const PX_PER_CHARACTER = 7;
const PADDING = 5;

/** The content of a new sheet as the grid takes it: a full block of cells, and the room about it. */
export function gridCells(content: SheetContent) {
  const { widths = [] } = content;
  const rows = withChartWords(content);
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const cells = rows.map((row) =>
    Array.from({ length: columns }, (_, column): ICellData => {
      const { value = null, formula, ...looks } = row[column] ?? {};
      const content = formula === undefined ? gridValue(value) : { f: `=${formula}` };
      const style = gridLooks(looks);
      return { ...content, ...(Object.keys(style).length > 0 && { s: style }) };
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

const RULE = "#c8cdd2";

function gridLooks({
  bold,
  wrap,
  right,
  ruled,
  shade,
  flag,
  format,
}: Omit<SheetCell, "value" | "formula">): IStyleData {
  const fill = flag === undefined ? (shade === true ? "#e9ecef" : null) : FLAG_FILLS[flag];
  return {
    ...(bold === true && { bl: BooleanNumber.TRUE }),
    ...(wrap === true && { tb: WrapStrategy.WRAP }),
    ...((wrap === true || ruled === true) && { vt: VerticalAlign.TOP }),
    ...(right === true && { ht: HorizontalAlign.RIGHT }),
    ...(ruled === true && { bd: { b: { s: BorderStyleTypes.THIN, cl: { rgb: RULE } } } }),
    // a flag's fill is light in either theme, so the words on it are dark
    ...(fill !== null && { bg: { rgb: fill }, cl: { rgb: "#000000" } }),
    ...(format !== undefined && { n: { pattern: format } }),
  };
}

/** Where the file has a chart, the grid, which has none, says so. */
function withChartWords({ rows, chart }: SheetContent): readonly (readonly SheetCell[])[] {
  if (chart === undefined) return rows;
  const all = Array.from({ length: Math.max(rows.length, chart.row + 1) }, (_, row) => [
    ...(rows[row] ?? []),
  ]);
  const line = all[chart.row]!;
  while (line.length <= chart.column) line.push({ value: null });
  line[chart.column] = { value: CHART_WORDS };
  return all;
}
