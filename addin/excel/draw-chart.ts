import { seriesLook } from "../workbook/series-colours";
import { ROW_PX, type StackedBars } from "../workbook/stacked-bars";

/** By it a sheet's chart is found again when the sheet is written anew. */
export const CHART_NAME = "Barwright tonnes";

const POINTS_PER_PX = 0.75;

/** Draws bars stacked by series over a table of the sheet; the first category on top, as in the table. */
export function drawChart(sheet: Excel.Worksheet, bars: StackedBars): void {
  const { table, row, column, width, height, title, unit, named } = bars;
  const rows = Math.ceil(height / ROW_PX) + 1;
  sheet.getRangeByIndexes(row, column, rows, 1).untrack().format.rowHeight = ROW_PX * POINTS_PER_PX;
  const source = sheet.getRangeByIndexes(table.top, table.left, table.rows + 1, table.columns + 1).untrack();
  const chart = sheet.charts.add("BarStacked", source, "Columns");
  chart.name = CHART_NAME;
  chart.title.text = title;
  chart.legend.position = "Top";
  chart.plotVisibleOnly = false;
  chart.width = width * POINTS_PER_PX;
  chart.height = height * POINTS_PER_PX;
  chart.setPosition(sheet.getRangeByIndexes(row, column, 1, 1).untrack());
  const { categoryAxis, valueAxis } = chart.axes;
  categoryAxis.reversePlotOrder = true;
  // the tonnes stay at the foot, where the categories end
  categoryAxis.position = "Maximum";
  valueAxis.minimum = 0;
  valueAxis.title.text = unit;
  named.forEach((parts, index) => {
    drawSeries(chart.series.getItemAt(index), index, parts);
  });
}

function drawSeries(series: Excel.ChartSeries, index: number, named: readonly boolean[]): void {
  const { fill, line, words } = seriesLook(index);
  series.gapWidth = 40;
  series.format.fill.setSolidColor(`#${fill}`);
  series.format.line.color = `#${line}`;
  if (!named.includes(true)) return;
  series.hasDataLabels = true;
  const { dataLabels } = series;
  dataLabels.showSeriesName = true;
  dataLabels.showValue = false;
  dataLabels.format.font.color = `#${words}`;
  named.forEach((has, point) => {
    if (!has) series.points.getItemAt(point).hasDataLabel = false;
  });
}
