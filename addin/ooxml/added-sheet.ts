import type { Cell } from "../../core/schedule/sheet";
import { hasBarFunction, storedFormula } from "./bar-formula-names";
import { cellAddress } from "./cell-address";
import type { FlagSeverity } from "./flag-colours";
import { filledRange, storedResult } from "./stored-result";
import type { StylePatch } from "./style-patch";
import { encodeCellText, encodeXml } from "./xml-text";

/** A cell of a sheet that is added to a workbook. */
export interface AddedCell {
  readonly value: Cell;
  /** as typed, without the equals sign; `value` is its result as stored */
  readonly formula?: string;
  /** rows and columns that the formula's result fills */
  readonly fills?: { readonly rows: number; readonly columns: number };
  readonly bold?: boolean;
  readonly wrap?: boolean;
  readonly flag?: FlagSeverity;
  /** place in the same workbook to jump to */
  readonly link?: { readonly sheet: string; readonly cell: string };
}

/** A sheet to be put behind a workbook's own. */
export interface AddedSheet {
  /** made distinct where the workbook has a sheet of that name */
  readonly name: string;
  /** characters, by column */
  readonly widths: readonly number[];
  readonly frozenRows: number;
  readonly rows: readonly (readonly AddedCell[])[];
}

/** Text of the sheet's part; its texts stand in its own cells. `arrayMark` is the metadata of a dynamic array. */
export function addedSheetXml(sheet: AddedSheet, styles: StylePatch, arrayMark: () => number): string {
  const links: string[] = [];
  const rows = sheet.rows.map((cells, row) => {
    const xml = cells.map((cell, column) => {
      const address = cellAddress(row, column);
      if (cell.link !== undefined) links.push(linkXml(address, cell.link));
      const { value, bold, wrap, flag } = cell;
      const style = styles.added({
        ...(bold === undefined ? {} : { bold }),
        ...(wrap === undefined ? {} : { wrap }),
        ...(flag === undefined ? {} : { flag }),
        ...(cell.link === undefined ? {} : { link: true }),
      });
      if (cell.formula !== undefined) return formulaXml(address, style, cell, cell.formula, arrayMark);
      if (typeof value === "string") {
        const text = `<is><t xml:space="preserve">${encodeCellText(value)}</t></is>`;
        return `<c r="${address}" s="${style}" t="inlineStr">${text}</c>`;
      }
      const { type, content } = storedResult(value);
      return content === "" ? "" : `<c r="${address}" s="${style}"${type}>${content}</c>`;
    });
    return `<row r="${row + 1}">${xml.join("")}</row>`;
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
    `<sheetViews>${view}</sheetViews>${widths.length === 0 ? "" : `<cols>${widths.join("")}</cols>`}<sheetData>${rows.join("")}</sheetData>` +
    (links.length === 0 ? "" : `<hyperlinks>${links.join("")}</hyperlinks>`) +
    "</worksheet>"
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

function linkXml(address: string, link: { readonly sheet: string; readonly cell: string }): string {
  const location = `'${link.sheet.replaceAll("'", "''")}'!${link.cell}`;
  return `<hyperlink ref="${address}" location="${encodeXml(location)}" display="${encodeXml(link.cell)}"/>`;
}
