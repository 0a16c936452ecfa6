import { addressAt } from "../../../core/schedule/cell-address";
import type { Cell } from "../../../core/schedule/sheet";
import { withDefinedNames } from "../read/defined-names";
import { cellXml } from "../xml/cell-xml";
import { encodeCellText, encodeXml } from "../xml/encode-xml";
import { type ZipHost, ZipWriter } from "../zip/write-zip";
import { type NewCellLook, StyleBook } from "./style-book";

/** A cell that is more than a value. */
export interface NewCell {
  readonly value: Cell;
  /** as typed, without the equals sign; `value` is its result as stored */
  readonly formula?: string;
  /** rows and columns that the formula's result fills */
  readonly fills?: { readonly rows: number; readonly columns: number };
  readonly look?: NewCellLook;
}

export interface NewSheet {
  readonly name: string;
  readonly rows: Iterable<readonly (Cell | NewCell)[]>;
  /** characters, by column */
  readonly widths?: readonly number[];
  readonly frozenRows?: number;
  /** ranges such as "A1:F1" */
  readonly merges?: readonly string[];
  readonly hiddenRows?: ReadonlySet<number>;
}

export interface NewWorkbook {
  readonly sheets: readonly NewSheet[];
  /** name to formula, without the equals sign */
  readonly names?: ReadonlyMap<string, string>;
}

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** Bytes of a new .xlsx file. Rows are taken one by one, so a large sheet need not stand in memory. */
export function writeNewWorkbook(workbook: NewWorkbook, host: ZipHost = {}): Uint8Array {
  const zip = new ZipWriter(host);
  const looks = new StyleBook();
  const texts = new Map<string, number>();
  let usesArrays = false;
  workbook.sheets.forEach((sheet, index) => {
    const writer = new SheetWriter(sheet, looks, texts);
    zip.add(`xl/worksheets/sheet${index + 1}.xml`, writer.pieces());
    usesArrays ||= writer.usesArrays;
  });
  const add = (name: string, xml: string): void => zip.add(name, new TextEncoder().encode(HEAD + xml));
  add("xl/workbook.xml", workbookXml(workbook));
  add("xl/_rels/workbook.xml.rels", workbookRelationships(workbook.sheets.length, usesArrays));
  add("xl/styles.xml", looks.xml());
  add("xl/sharedStrings.xml", sharedStringsXml(texts));
  if (usesArrays) add("xl/metadata.xml", DYNAMIC_ARRAY_METADATA);
  add(
    "_rels/.rels",
    `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  );
  add("[Content_Types].xml", contentTypes(workbook.sheets.length, usesArrays));
  return zip.finish();
}

/** `xl/metadata.xml` with one entry: cell metadata 1 marks a dynamic array formula. */
export const DYNAMIC_ARRAY_METADATA =
  `<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">` +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" ' +
  'pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" ' +
  'coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst>' +
  '<ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/>' +
  '</ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

class SheetWriter {
  usesArrays = false;
  private readonly place = {
    arrayMark: (): number => {
      this.usesArrays = true;
      return 1;
    },
    storeText: (text: string) => this.sharedText(text),
  };

  constructor(
    private readonly sheet: NewSheet,
    private readonly looks: StyleBook,
    private readonly texts: Map<string, number>,
  ) {}

  *pieces(): Generator<Uint8Array> {
    const encoder = new TextEncoder();
    let held = HEAD + this.head();
    let row = 0;
    for (const cells of this.sheet.rows) {
      held += this.row(row, cells);
      row += 1;
      if (held.length > 128 * 1024) {
        yield encoder.encode(held);
        held = "";
      }
    }
    yield encoder.encode(`${held}</sheetData>${this.tail()}</worksheet>`);
  }

  private head(): string {
    const frozen = this.sheet.frozenRows ?? 0;
    const pane =
      frozen === 0
        ? ""
        : `<sheetViews><sheetView workbookViewId="0"><pane ySplit="${frozen}" topLeftCell="A${frozen + 1}" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>`;
    const widths = (this.sheet.widths ?? [])
      .map((width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`)
      .join("");
    const columns = widths === "" ? "" : `<cols>${widths}</cols>`;
    return `<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">${pane}${columns}<sheetData>`;
  }

  private tail(): string {
    const merges = this.sheet.merges ?? [];
    if (merges.length === 0) return "";
    const cells = merges.map((range) => `<mergeCell ref="${range}"/>`).join("");
    return `<mergeCells count="${merges.length}">${cells}</mergeCells>`;
  }

  private row(row: number, cells: readonly (Cell | NewCell)[]): string {
    let xml = "";
    cells.forEach((cell, column) => {
      xml += this.cell(addressAt(row, column), isNewCell(cell) ? cell : { value: cell });
    });
    const hidden = this.sheet.hiddenRows?.has(row) === true ? ' hidden="1"' : "";
    return xml === "" && hidden === "" ? "" : `<row r="${row + 1}"${hidden}>${xml}</row>`;
  }

  private cell(address: string, cell: NewCell): string {
    const style = cell.look === undefined ? 0 : this.looks.index(cell.look);
    if (style === 0 && cell.value === null && cell.formula === undefined) return "";
    const attributes = ` r="${address}"${style === 0 ? "" : ` s="${style}"`}`;
    return cellXml({ address, attributes, ...this.place }, cell);
  }

  private sharedText(value: string): { type: string; content: string } {
    let index = this.texts.get(value);
    if (index === undefined) {
      index = this.texts.size;
      this.texts.set(value, index);
    }
    return { type: ' t="s"', content: `<v>${index}</v>` };
  }
}

function isNewCell(cell: Cell | NewCell): cell is NewCell {
  return typeof cell === "object" && cell !== null && "value" in cell;
}

function workbookXml(workbook: NewWorkbook): string {
  const sheets = workbook.sheets
    .map(
      (sheet, index) =>
        `<sheet name="${encodeXml(sheet.name)}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`,
    )
    .join("");
  const xml = `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${sheets}</sheets></workbook>`;
  return withDefinedNames(xml, workbook.names ?? new Map());
}

function workbookRelationships(sheets: number, usesArrays: boolean): string {
  const targets: [string, string][] = Array.from({ length: sheets }, (_, index) => [
    `${OFFICE}/worksheet`,
    `worksheets/sheet${index + 1}.xml`,
  ]);
  targets.push([`${OFFICE}/styles`, "styles.xml"], [`${OFFICE}/sharedStrings`, "sharedStrings.xml"]);
  if (usesArrays) targets.push([`${OFFICE}/sheetMetadata`, "metadata.xml"]);
  const list = targets.map(
    ([type, target], index) => `<Relationship Id="rId${index + 1}" Type="${type}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${PACKAGE}/relationships">${list.join("")}</Relationships>`;
}

function contentTypes(sheets: number, usesArrays: boolean): string {
  const override = (part: string, type: string): string =>
    `<Override PartName="/xl/${part}" ContentType="${type}"/>`;
  const list = Array.from({ length: sheets }, (_, index) =>
    override(`worksheets/sheet${index + 1}.xml`, `${KIND}.worksheet+xml`),
  );
  list.push(override("workbook.xml", `${KIND}.sheet.main+xml`), override("styles.xml", `${KIND}.styles+xml`));
  list.push(override("sharedStrings.xml", `${KIND}.sharedStrings+xml`));
  if (usesArrays) list.push(override("metadata.xml", `${KIND}.sheetMetadata+xml`));
  return (
    `<Types xmlns="${PACKAGE}/content-types">` +
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
    `<Default Extension="xml" ContentType="application/xml"/>${list.join("")}</Types>`
  );
}

function sharedStringsXml(texts: ReadonlyMap<string, number>): string {
  let items = "";
  for (const text of texts.keys()) items += `<si><t xml:space="preserve">${encodeCellText(text)}</t></si>`;
  return `<sst xmlns="${MAIN}" uniqueCount="${texts.size}">${items}</sst>`;
}
