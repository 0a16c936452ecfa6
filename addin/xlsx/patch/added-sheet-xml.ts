import { addressAt } from "../../../core/schedule/cell-address";
import type { AddedCell, AddedSheet, PrintSetUp } from "../../workbook/added-sheet";
import { LAST_COLUMN } from "../../workbook/cell-address";
import { ROW_PX, type StackedBars } from "../../workbook/stacked-bars";
import { wrappedLines } from "../../workbook/wrapped-lines";
import { cellXml } from "../xml/cell-xml";
import { encodeXml } from "../xml/encode-xml";
import { type PartText, wholeText } from "../xml/encoded-pieces";
import type { StylePatch } from "./style-patch";

/** Points of a row of the usual height. */
const ROW_HEIGHT = 15;
/** points, the most that Excel gives a row */
const HIGHEST_ROW = 409;

/**
 * Text of the sheet's part; its texts stand in its own cells. `name` is the one it got, `arrayMark` the
 * metadata of a dynamic array, `drawing` the attribute that names the part with its chart. The styles of its
 * cells are made at once, its text when it is asked for.
 */
export function addedSheetText(
  sheet: AddedSheet,
  name: string,
  styles: StylePatch,
  arrayMark: () => number,
  drawing: string | null,
): PartText {
  let hasFormula = false;
  for (const cells of sheet.rows)
    for (const cell of cells) {
      styleOf(cell, styles);
      hasFormula ||= cell.formula !== undefined;
    }
  const text = { pieces: () => sheetPieces(sheet, name, styles, arrayMark, drawing) };
  // a formula may have the workbook get metadata, before that is packed
  return hasFormula ? wholeText(text) : text;
}

function* sheetPieces(
  sheet: AddedSheet,
  name: string,
  styles: StylePatch,
  arrayMark: () => number,
  drawing: string | null,
): Generator<string> {
  const widths = sheet.widths.map(
    (width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`,
  );
  const frozen = sheet.frozenRows;
  const pane = `<pane ySplit="${frozen}" topLeftCell="A${frozen + 1}" activePane="bottomLeft" state="frozen"/>`;
  const view = `<sheetView workbookViewId="0">${frozen > 0 ? pane : ""}</sheetView>`;
  yield '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
    (sheet.print === undefined ? "" : '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>') +
    `<sheetViews>${view}</sheetViews>` +
    `${widths.length === 0 ? "" : `<cols>${widths.join("")}</cols>`}<sheetData>`;
  const behindChart = chartRows(sheet.chart);
  let hasLinks = false;
  for (let row = 0; row < Math.max(sheet.rows.length, behindChart.end); row += 1) {
    const isFixed = row >= behindChart.first && row < behindChart.end;
    const height = isFixed ? ` ht="${ROW_HEIGHT}" customHeight="1"` : heightOf(sheet, row);
    let line = `<row r="${row + 1}"${height}>`;
    for (const [column, cell] of (sheet.rows[row] ?? []).entries()) {
      hasLinks ||= cell.link !== undefined;
      line += addedCell(addressAt(row, column), cell, styles, arrayMark);
    }
    yield `${line}</row>`;
  }
  yield `</sheetData>${hasLinks ? "<hyperlinks>" : ""}`;
  if (hasLinks) yield* linkPieces(sheet, name);
  yield (hasLinks ? "</hyperlinks>" : "") +
    (sheet.print === undefined ? "" : printXml(sheet.print)) +
    (drawing === null ? "" : `<drawing ${drawing}/>`) +
    "</worksheet>";
}

function* linkPieces({ rows }: AddedSheet, name: string): Generator<string> {
  for (const [row, cells] of rows.entries())
    for (const [column, { link }] of cells.entries())
      if (link !== undefined) yield linkXml(addressAt(row, column), link, name);
}

/** Rows that a chart lies over have a height of their own, so that it ends where its print area does. */
function chartRows(chart: StackedBars | undefined): { first: number; end: number } {
  if (chart === undefined) return { first: 0, end: 0 };
  return { first: chart.row, end: chart.row + Math.ceil(chart.height / ROW_PX) + 1 };
}

/** Not every program makes a row as high as its wrapped words when it opens a file, so the file says it. */
function heightOf({ rows, widths }: AddedSheet, row: number): string {
  let most = 1;
  for (const [column, { value, wrap }] of (rows[row] ?? []).entries())
    if (wrap === true && typeof value === "string")
      most = Math.max(most, wrappedLines(value, widths[column] ?? 1));
  return most === 1 ? "" : ` ht="${Math.min(most * ROW_HEIGHT, HIGHEST_ROW)}"`;
}

function addedCell(address: string, cell: AddedCell, styles: StylePatch, arrayMark: () => number): string {
  if (cell.value === null && cell.formula === undefined && cell.ruled !== true) return "";
  return cellXml({ address, attributes: ` r="${address}" s="${styleOf(cell, styles)}"`, arrayMark }, cell);
}

function styleOf(cell: AddedCell, styles: StylePatch): number {
  return styles.added(cell, cell.link !== undefined);
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

function linkXml(address: string, { sheet, cell }: NonNullable<AddedCell["link"]>, own: string): string {
  const location = `'${(sheet ?? own).replaceAll("'", "''")}'!${cell}`;
  return `<hyperlink ref="${address}" location="${encodeXml(location)}" display="${encodeXml(cell)}"/>`;
}
