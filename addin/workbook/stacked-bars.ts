/** A table on a sheet that a chart shows; rows and columns are the sheet's, from 0. */
export interface ChartTable {
  /** row of the series' names */
  readonly top: number;
  /** column of the categories' names */
  readonly left: number;
  /** categories, a row each under `top` */
  readonly rows: number;
  /** series, a column each right of `left` */
  readonly columns: number;
}

/** A chart of horizontal bars, a bar each category, stacked by series, over a table of the same sheet. */
export interface StackedBars {
  readonly title: string;
  /** for whoever does not see it: what it shows and where its table stands */
  readonly description: string;
  /** unit along the bars */
  readonly unit: string;
  readonly table: ChartTable;
  /** top left corner */
  readonly row: number;
  readonly column: number;
  /** px */
  readonly width: number;
  readonly height: number;
  /** by series and category: the bar has room for its series' name */
  readonly named: readonly (readonly boolean[])[];
}

/** Stands where the saved file has a sheet's chart, on a grid that draws none. */
export const CHART_WORDS =
  "Here the saved file has a chart of the table above. This grid draws none; the pane does, under Tonnage per pour.";

/** px of a row of the usual height, 15 points */
export const ROW_PX = 20;

/** bars that a chart holds on one printed page */
export const MOST_BARS = 32;

const BAR = 28;
const THIN_BAR = 20;
/** bars from which they are drawn thin, to stay on the page */
const MANY = 22;
const TITLE = 40;
const LEGEND_LINE = 22;
const AXIS = 64;
const KEY = 34;
const LETTER = 7;
/** share of the room beside the names that the longest bar takes: the axis ends at a round number */
const LONGEST_BAR = 0.8;
/** share of the chart's width that names take at the most */
const WIDEST_NAMES = 0.4;
const NAME_LETTER = 6;
const LEAST_HEIGHT = 200;

/** Height in px that keeps each bar as thick as its name, with the keys in as many lines as they need. */
export function stackedBarsHeight(categories: number, series: readonly string[], width: number): number {
  const keys = series.reduce((sum, name) => sum + KEY + name.length * LETTER, 0);
  const lines = Math.max(1, Math.ceil(keys / (width * 0.9)));
  return Math.max(
    LEAST_HEIGHT,
    TITLE + lines * LEGEND_LINE + AXIS + categories * (categories > MANY ? THIN_BAR : BAR),
  );
}

/** By series and category: whether a bar's part has room for its series' name beside the categories' names. */
export function namedParts(
  values: readonly (readonly number[])[],
  series: readonly string[],
  categories: readonly string[],
  width: number,
): boolean[][] {
  const totals = values.map((row) => row.reduce((sum, value) => sum + value, 0));
  const most = Math.max(0, ...totals);
  const longest = Math.max(0, ...categories.map((name) => name.length));
  const room = width - Math.min(longest * NAME_LETTER, width * WIDEST_NAMES);
  return series.map((name, column) =>
    values.map((row) => (row[column]! / most) * room * LONGEST_BAR > (name.length + 1) * LETTER),
  );
}
