import type { AddedCell, AddedSheet, PrintSetUp } from "../../workbook/added-sheet";
import { hasBarFunction, storedFormula } from "../../workbook/bar-formula-names";
import { cellAddress, LAST_COLUMN } from "../../workbook/cell-address";
import { ROW_PX, type StackedBars } from "../../workbook/stacked-bars";
import { wrappedLines } from "../../workbook/wrapped-lines";
import { encodeCellText, encodeXml } from "../xml/encode-xml";
import { filledRange, storedResult } from "./stored-result";
import type { StylePatch } from "./style-patch";

/** Points of a row of the usual height. */
const ROW_HEIGHT = 15;
/** points, the most that Excel gives a row */
const HIGHEST_ROW = 409;

/**
 * Text of the sheet's part; its texts stand in its own cells. `name` is the one it got, `arrayMark` the
 * metadata of a dynamic array, `drawing` the attribute that names the part with its chart.
 */
export function addedSheetXml(
  sheet: AddedSheet,
  name: string,
  styles: StylePatch,
  arrayMark: () => number,
  drawing: string | null,
): string {
  const links: string[] = [];
  const rows = sheet.rows.map((cells, row) =>
    cells
      .map((cell, column) => {
        const address = cellAddress(row, column);
        if (cell.link !== undefined) links.push(linkXml(address, cell.link, name));
        return cellXml(address, cell, styles, arrayMark);
      })
      .join(""),
  );
  const behindChart = chartRows(sheet.chart);
  while (rows.length < behindChart.end) rows.push("");
  const lines = rows.map((cells, row) => {
    const isFixed = row >= behindChart.first && row < behindChart.end;
    const height = isFixed ? ` ht="${ROW_HEIGHT}" customHeight="1"` : heightOf(sheet, row);
    return `<row r="${row + 1}"${height}>${cells}</row>`;
  });
  const widths = sheet.widths.map(
    (width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`,
  );
  const frozen = sheet.frozenRows;
  const pane = `<pane ySplit="${frozen}" topLeftCell="A${frozen + 1}" activePane="bottomLeft" state="frozen"/>`;
  const view = `<sheetView workbookViewId="0">${frozen > 0 ? pane : ""}</sheetView>`;
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
    (sheet.print === undefined ? "" : '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>') +
    `<sheetViews>${view}</sheetViews>` +
    `${widths.length === 0 ? "" : `<cols>${widths.join("")}</cols>`}<sheetData>${lines.join("")}</sheetData>` +
    (links.length === 0 ? "" : `<hyperlinks>${links.join("")}</hyperlinks>`) +
    (sheet.print === undefined ? "" : printXml(sheet.print)) +
    (drawing === null ? "" : `<drawing ${drawing}/>`) +
    "</worksheet>"
  );
}

/** Rows that a chart lies over have a height of their own, so that it ends where its print area does. */
function chartRows(chart: StackedBars | undefined): { first: number; end: number } {
  if (chart === undefined) return { first: 0, end: 0 };
  return { first: chart.row, end: chart.row + Math.ceil(chart.height / ROW_PX) + 1 };
}

/** Not every program makes a row as high as its wrapped words when it opens a file, so the file says it. */
function heightOf({ rows, widths }: AddedSheet, row: number): string {
  const lines = (rows[row] ?? []).map(({ value, wrap }, column) =>
    wrap === true && typeof value === "string" ? wrappedLines(value, widths[column] ?? 1) : 1,
  );
  const most = Math.max(1, ...lines);
  return most === 1 ? "" : ` ht="${Math.min(most * ROW_HEIGHT, HIGHEST_ROW)}"`;
}

function cellXml(address: string, cell: AddedCell, styles: StylePatch, arrayMark: () => number): string {
  const { value, link, formula } = cell;
  const style = styles.added({ ...cell, link: link !== undefined });
  if (formula !== undefined) return formulaXml(address, style, cell, formula, arrayMark);
  if (typeof value === "string") {
    const text = `<is><t xml:space="preserve">${encodeCellText(value)}</t></is>`;
    return `<c r="${address}" s="${style}" t="inlineStr">${text}</c>`;
  }
  const { type, content } = storedResult(value);
  if (content === "" && cell.ruled !== true) return "";
  return `<c r="${address}" s="${style}"${type}>${content}</c>`;
}

const A4 = 9;
const LETTER = 1;

function printXml({ isLetter, breakBefore }: PrintSetUp): string {
  return (
    '<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.6" header="0.3" footer="0.3"/>' +
    `<pageSetup paperSize="${isLetter ? LETTER : A4}" orientation="landscape" fitToHeight="0"/>` +
    "<headerFooter><oddFooter>&amp;L&amp;F&amp;C&amp;A&amp;RPage &amp;P of &amp;N</oddFooter></headerFooter>" +
    (breakBefore === undefined
      ? ""
      : `<rowBreaks count="1" manualBreakCount="1"><brk id="${breakBefore}" max="${LAST_COLUMN}" man="1"/></rowBreaks>`)
  );
}

function formulaXml(
  address: string,
  style: number,
  { value, fills }: AddedCell,
  formula: string,
  arrayMark: () => number,
): string {
  const { type, content } = storedResult(value);
  const text = encodeXml(storedFormula(formula));
  if (fills === undefined && !hasBarFunction(formula))
    return `<c r="${address}" s="${style}"${type}><f>${text}</f>${content}</c>`;
  const range = filledRange(address, fills);
  return `<c r="${address}" s="${style}"${type} cm="${arrayMark()}"><f t="array" ref="${range}">${text}</f>${content}</c>`;
}

function linkXml(address: string, { sheet, cell }: NonNullable<AddedCell["link"]>, own: string): string {
  const location = `'${(sheet ?? own).replaceAll("'", "''")}'!${cell}`;
  return `<hyperlink ref="${address}" location="${encodeXml(location)}" display="${encodeXml(cell)}"/>`;
}
