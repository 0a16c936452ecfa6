import { columnLetters } from "../../../core/schedule/cell-address";
import { type Cell, isCellError } from "../../../core/schedule/sheet";
import { seriesLook } from "../../workbook/series-colours";
import type { StackedBars } from "../../workbook/stacked-bars";
import { encodeXml } from "../xml/encode-xml";

const CHART_SPACE = "http://schemas.openxmlformats.org/drawingml/2006/chart";
const DRAWING_SPACE = "http://schemas.openxmlformats.org/drawingml/2006/main";
const ANCHOR_SPACE = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** English Metric Units of a pixel at 96 to the inch (ECMA-376-1:2016, 20.1.10.16: 914,400 to the inch) */
const EMU_PER_PX = 9525;
const LINE = 9525;
const CATEGORIES = 50_010_001;
const VALUES = 50_010_002;
const WORDS = "404040";
const GRID = "d9d9d9";
const FORMAT = "0.000";

/**
 * Text of a chart part: bars stacked by series, the first category on top, as the table has it. The
 * table's cells are kept in the part too, as every program that writes one does. Elements stand in the
 * order of ECMA-376-1:2016, 21.2.2 (from memory), which Excel insists on.
 */
export function chartXml(
  chart: StackedBars,
  sheetName: string,
  cell: (row: number, column: number) => Cell,
): string {
  const { table, title, unit } = chart;
  const sheet = `'${sheetName.replaceAll("'", "''")}'!`;
  const last = table.top + table.rows;
  const rows = Array.from({ length: table.rows }, (_, index) => table.top + 1 + index);
  const column = (at: number): string => range(sheet, table.top + 1, last, at);
  const categories = texts(
    column(table.left),
    rows.map((row) => cell(row, table.left)),
  );
  const series = Array.from({ length: table.columns }, (_, index) => {
    const at = table.left + 1 + index;
    const name = texts(range(sheet, table.top, table.top, at), [cell(table.top, at)]);
    const values = numbers(
      column(at),
      rows.map((row) => cell(row, at)),
    );
    const { fill, line } = seriesLook(index);
    return (
      `<c:ser><c:idx val="${index}"/><c:order val="${index}"/><c:tx>${name}</c:tx>` +
      `<c:spPr>${solid(fill)}<a:ln w="${LINE}">${solid(line)}</a:ln></c:spPr><c:invertIfNegative val="0"/>` +
      `${labels(chart, index)}<c:cat>${categories}</c:cat><c:val>${values}</c:val></c:ser>`
    );
  });
  const bars =
    `<c:barChart><c:barDir val="bar"/><c:grouping val="stacked"/><c:varyColors val="0"/>${series.join("")}` +
    `<c:gapWidth val="40"/><c:overlap val="100"/><c:axId val="${CATEGORIES}"/><c:axId val="${VALUES}"/></c:barChart>`;
  const plot = `<c:plotArea><c:layout/>${bars}${categoryAxis()}${valueAxis(unit)}<c:spPr><a:noFill/></c:spPr></c:plotArea>`;
  return (
    `${HEAD}<c:chartSpace xmlns:c="${CHART_SPACE}" xmlns:a="${DRAWING_SPACE}" xmlns:r="${OFFICE}">` +
    '<c:date1904 val="0"/><c:roundedCorners val="0"/>' +
    `<c:chart>${words(title, 1400, true)}<c:autoTitleDeleted val="0"/>${plot}` +
    `<c:legend><c:legendPos val="t"/><c:overlay val="0"/>${letters(1000)}</c:legend>` +
    '<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>' +
    `<c:spPr>${solid("ffffff")}<a:ln w="${LINE}">${solid(GRID)}</a:ln></c:spPr></c:chartSpace>`
  );
}

/** Text of a drawing part with one chart, whose relationship is `chartId`. */
export function chartDrawingXml(chart: StackedBars, chartId: string): string {
  const { row, column, width, height, title, description } = chart;
  const name = `name="${encodeXml(title)}" descr="${encodeXml(description)}"`;
  return (
    `${HEAD}<xdr:wsDr xmlns:xdr="${ANCHOR_SPACE}" xmlns:a="${DRAWING_SPACE}"><xdr:oneCellAnchor>` +
    `<xdr:from><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from>` +
    `<xdr:ext cx="${width * EMU_PER_PX}" cy="${height * EMU_PER_PX}"/><xdr:graphicFrame macro="">` +
    `<xdr:nvGraphicFramePr><xdr:cNvPr id="2" ${name}/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>` +
    '<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>' +
    `<a:graphic><a:graphicData uri="${CHART_SPACE}"><c:chart xmlns:c="${CHART_SPACE}" xmlns:r="${OFFICE}" r:id="${chartId}"/></a:graphicData></a:graphic>` +
    "</xdr:graphicFrame><xdr:clientData/></xdr:oneCellAnchor></xdr:wsDr>"
  );
}

/** The series' name in every part of a bar that has room for it, so that colour is not all there is. */
function labels({ named }: StackedBars, series: number): string {
  const parts = named[series] ?? [];
  if (!parts.includes(true)) return "";
  const without = parts.map((has, index) =>
    has ? "" : `<c:dLbl><c:idx val="${index}"/><c:delete val="1"/></c:dLbl>`,
  );
  return (
    `<c:dLbls>${without.join("")}<c:spPr><a:noFill/><a:ln><a:noFill/></a:ln></c:spPr>${letters(900, seriesLook(series).words)}` +
    '<c:showLegendKey val="0"/><c:showVal val="0"/><c:showCatName val="0"/><c:showSerName val="1"/>' +
    '<c:showPercent val="0"/><c:showBubbleSize val="0"/></c:dLbls>'
  );
}

function categoryAxis(): string {
  return (
    `<c:catAx><c:axId val="${CATEGORIES}"/><c:scaling><c:orientation val="maxMin"/></c:scaling><c:delete val="0"/>` +
    '<c:axPos val="l"/><c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="none"/>' +
    `<c:minorTickMark val="none"/><c:tickLblPos val="low"/><c:spPr><a:ln w="${LINE}">${solid(WORDS)}</a:ln></c:spPr>${letters(1000)}` +
    `<c:crossAx val="${VALUES}"/><c:crosses val="autoZero"/><c:auto val="1"/><c:lblAlgn val="ctr"/>` +
    '<c:lblOffset val="100"/><c:noMultiLvlLbl val="1"/></c:catAx>'
  );
}

/** At the foot of the chart: it crosses where the categories, which run down, end. */
function valueAxis(unit: string): string {
  return (
    `<c:valAx><c:axId val="${VALUES}"/><c:scaling><c:orientation val="minMax"/><c:min val="0"/></c:scaling><c:delete val="0"/>` +
    `<c:axPos val="b"/><c:majorGridlines><c:spPr><a:ln w="${LINE}">${solid(GRID)}</a:ln></c:spPr></c:majorGridlines>` +
    `${words(unit, 1000, false)}<c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="out"/>` +
    `<c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/><c:spPr><a:ln w="${LINE}">${solid(GRID)}</a:ln></c:spPr>${letters(1000)}` +
    `<c:crossAx val="${CATEGORIES}"/><c:crosses val="max"/><c:crossBetween val="between"/></c:valAx>`
  );
}

function words(text: string, size: number, isBold: boolean): string {
  const look = `sz="${size}" b="${isBold ? 1 : 0}"`;
  const colour = solid(WORDS);
  return (
    `<c:title><c:tx><c:rich><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr ${look}>${colour}</a:defRPr></a:pPr>` +
    `<a:r><a:rPr lang="en-GB" ${look}>${colour}</a:rPr><a:t>${encodeXml(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`
  );
}

function letters(size: number, colour = WORDS): string {
  return `<c:txPr><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr sz="${size}" b="0">${solid(colour)}</a:defRPr></a:pPr><a:endParaRPr lang="en-GB"/></a:p></c:txPr>`;
}

function texts(formula: string, cells: readonly Cell[]): string {
  const points = cells.map((cell, index) =>
    cell === null || isCellError(cell)
      ? ""
      : `<c:pt idx="${index}"><c:v>${encodeXml(String(cell))}</c:v></c:pt>`,
  );
  return `<c:strRef><c:f>${encodeXml(formula)}</c:f><c:strCache><c:ptCount val="${cells.length}"/>${points.join("")}</c:strCache></c:strRef>`;
}

function numbers(formula: string, cells: readonly Cell[]): string {
  const points = cells.map((cell, index) =>
    typeof cell === "number" ? `<c:pt idx="${index}"><c:v>${cell}</c:v></c:pt>` : "",
  );
  return (
    `<c:numRef><c:f>${encodeXml(formula)}</c:f><c:numCache><c:formatCode>${FORMAT}</c:formatCode>` +
    `<c:ptCount val="${cells.length}"/>${points.join("")}</c:numCache></c:numRef>`
  );
}

function range(sheet: string, firstRow: number, lastRow: number, column: number): string {
  const letter = columnLetters(column);
  const first = `${sheet}$${letter}$${firstRow + 1}`;
  return firstRow === lastRow ? first : `${first}:$${letter}$${lastRow + 1}`;
}

function solid(colour: string): string {
  return `<a:solidFill><a:srgbClr val="${colour.toUpperCase()}"/></a:solidFill>`;
}
