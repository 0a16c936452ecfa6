import type { Cell, Sheet } from "../../../core/schedule/sheet";
import { parseRange } from "../../workbook/cell-address";
import {
  attribute,
  decodeCellText,
  decodeXml,
  findElement,
  findElements,
  isTrue,
  xmlTags,
} from "../xml/xml-text";
import { CellStore } from "./cell-store";
import type { CellFormat } from "./cell-styles";
import { shownNumber } from "./number-format";
import { QuickRows } from "./quick-rows";
import { rowEnd } from "./row-bytes";
import { type ScannedCell, type ScannedRow, scanRows } from "./scan-cells";
import { isRichStruck, richText, type SharedStrings } from "./shared-strings";
import { decoded, sheetPieces } from "./sheet-pieces";

/** A formula as it stands in the file. */
export interface SheetFormula {
  /** without the equals sign; empty for the further cells of a shared formula */
  readonly text: string;
  readonly kind: "normal" | "array" | "shared" | "dataTable";
  /** range it fills or is shared over; null where none is given */
  readonly range: string | null;
  /** group of a shared formula */
  readonly group: number | null;
}

export interface ColumnWidth {
  readonly first: number;
  readonly last: number;
  /** characters; null keeps the sheet's default */
  readonly width: number | null;
  readonly hidden: boolean;
  readonly style: number;
}

/** A sheet of a workbook as core reads it, and what a grid needs to show it. Places count from the used range. */
export interface SheetReading extends Sheet {
  readonly isProtected: boolean;
  readonly columns: readonly ColumnWidth[];
  /** rows frozen above and columns frozen left of the cells */
  readonly frozen: { readonly rows: number; readonly columns: number };
  /** By the sheet's own row and column, from 0. Only kept where formulas were asked for. */
  formulaAt(row: number, column: number): SheetFormula | undefined;
  /** Style index by the sheet's own row and column; the row's or column's where the cell has none. */
  styleAt(row: number, column: number): number;
  /** Value by the sheet's own row and column. */
  valueAt(row: number, column: number): Cell;
  /** Rows that the file holds cells for, the sheet's own numbers from 0. */
  readonly rowNumbers: readonly number[];
  cellsOfRow(row: number): Generator<{ column: number; value: Cell; style: number }>;
  /** points, by the sheet's own row; null is the default */
  rowHeight(row: number): number | null;
  /** the part's text before its rows and after them */
  readonly layout: SheetLayout;
}

/** What stands before and after a sheet's rows in its part. */
export interface SheetLayout {
  readonly head: string;
  readonly tail: string;
}

export interface SheetSource {
  readonly name: string;
  readonly pieces: Iterable<Uint8Array>;
  readonly strings: SharedStrings;
  readonly formats: readonly CellFormat[];
  /** keeps formulas as well */
  readonly formulas: boolean;
  /** dates count from 1904 */
  readonly from1904: boolean;
}

/** Serial number of 1 January 1970 by date system. */
const FIRST_1970 = 25_569;
const FIRST_1970_OF_1904 = 24_107;

const UNCALCULATED = {
  error: "#N/A",
  message: "the formula has no stored result: open the workbook in a spreadsheet program and save it",
  uncalculated: true,
} as const;

/** Reads one worksheet's cells, what hides or strikes them, and its layout. */
export function readSheet(source: SheetSource): SheetReading {
  const store = new CellStore();
  const formulas = new Map<number, SheetFormula>();
  const struck = new Set<number>();
  const dates = new Set<number>();
  const hiddenRows = new Set<number>();
  const rowStyles = new Map<number, number>();
  const heights = new Map<number, number>();
  const takeRow = (row: ScannedRow): void => {
    if (row.hidden) hiddenRows.add(row.row);
    if (row.style !== null) rowStyles.set(row.row, row.style);
    if (row.height !== null) heights.set(row.row, row.height);
  };
  const quick = new QuickRows(store, source.strings, takeRow, (index) => struck.add(index));
  /** Any row, whatever stands in it. */
  const readRow = (text: string, prefix: string): void => {
    const reader = new ValueReader(text, prefix, source);
    quick.last = scanRows(text, prefix, quick.last, {
      row: (row) => {
        store.startRow(row.row);
        takeRow(row);
        return true;
      },
      cell: (cell) => {
        const formula = source.formulas ? reader.formula(cell) : null;
        const index = store.add(cell.column, cell.style, reader.value(cell));
        if (formula !== null) formulas.set(index, formula);
        if (reader.wasStruck) struck.add(index);
        if (reader.wasDate) dates.add(index);
      },
      rowEnd: () => store.endRow(),
    });
  };
  let head = "";
  let tail = "";
  for (const piece of sheetPieces(source.pieces)) {
    if (piece.kind === "head") head = piece.text;
    else if (piece.kind === "tail") tail = piece.text;
    else eachRun(piece.bytes, piece.prefix, quick, readRow);
  }
  return assemble(source, {
    store,
    formulas,
    struck,
    dates,
    hiddenRows,
    rowStyles,
    heights,
    head,
    tail,
  });
}

/** Plain rows are read from their bytes; the text of all others, run by run, is given to `readRow`. */
function eachRun(
  bytes: Uint8Array,
  prefix: string,
  quick: QuickRows,
  readRow: (text: string, prefix: string) => void,
): void {
  if (prefix !== "") {
    readRow(decoded(bytes), prefix);
    return;
  }
  for (let at = quick.read(bytes, 0); at < bytes.length; at = quick.read(bytes, at)) {
    const end = rowEnd(bytes, at, CLOSE_ROW);
    readRow(decoded(bytes.subarray(at, end < 0 ? bytes.length : end)), prefix);
    if (end < 0) return;
    at = end;
  }
}

const CLOSE_ROW = new TextEncoder().encode("</row");

interface Scanned {
  readonly store: CellStore;
  readonly formulas: ReadonlyMap<number, SheetFormula>;
  readonly struck: ReadonlySet<number>;
  readonly dates: ReadonlySet<number>;
  readonly hiddenRows: ReadonlySet<number>;
  readonly rowStyles: ReadonlyMap<number, number>;
  readonly heights: ReadonlyMap<number, number>;
  readonly head: string;
  readonly tail: string;
}

function assemble(source: SheetSource, scanned: Scanned): SheetReading {
  const { store, head, tail } = scanned;
  const { formats } = source;
  const bounds = store.bounds() ?? { top: 0, left: 0, bottom: -1, right: -1 };
  const { top, left } = bounds;
  const columns = readColumns(head);
  const restHidden = isTrue(
    attribute(findElement(head, "sheetFormatPr")?.tag.attributes ?? "", "zeroHeight"),
  );
  const columnAt = (column: number) => columns.find((span) => column >= span.first && column <= span.last);
  const format = (index: number): CellFormat | undefined => formats[store.style(index)];
  const at = (row: number, column: number): number => store.find(row + top, column + left);
  const merges = readMerges(tail).map((range) => ({
    top: range.top - top,
    left: range.left - left,
    bottom: range.bottom - top,
    right: range.right - left,
  }));
  const valueAt = (row: number, column: number): Cell => {
    const index = store.find(row, column);
    return index < 0 ? null : store.cell(index);
  };
  return {
    name: source.name,
    top,
    left,
    rowCount: bounds.bottom - top + 1,
    columnCount: bounds.right - left + 1,
    merges,
    columns,
    frozen: readFrozen(head),
    isProtected: isSheetProtected(tail),
    rowNumbers: store.rowNumbers,
    valueAt,
    cell: (row, column) => valueAt(row + top, column + left),
    // as far as the row is filled: one stray cell in the last column makes no row long
    rowCells: (row) => {
      const cells: Cell[] = [];
      for (const { column, index } of store.cellsOfRow(row + top)) {
        if (column < left || store.isBlank(index)) continue;
        while (cells.length < column - left) cells.push(null);
        cells.push(store.cell(index));
      }
      return cells;
    },
    shown: (row, column) => {
      const index = at(row, column);
      const value = index < 0 ? null : store.cell(index);
      const code = typeof value === "number" ? format(index)?.numberFormat : undefined;
      return code === undefined || typeof value !== "number" ? undefined : shownNumber(value, code);
    },
    isDate: (row, column) => {
      const index = at(row, column);
      if (index < 0 || typeof store.cell(index) !== "number") return false;
      return scanned.dates.has(index) || format(index)?.isDate === true;
    },
    datesFrom1904: source.from1904,
    isHiddenRow: (row) => scanned.hiddenRows.has(row + top) || (restHidden && !store.hasRow(row + top)),
    isHiddenColumn: (column) => columnAt(column + left)?.hidden === true,
    isStruckThrough: (row, column) => {
      const index = at(row, column);
      return index >= 0 && (scanned.struck.has(index) || format(index)?.strike === true);
    },
    formulaAt: (row, column) => scanned.formulas.get(store.find(row, column)),
    styleAt: (row, column) => {
      const index = store.find(row, column);
      if (index >= 0) return store.style(index);
      return scanned.rowStyles.get(row) ?? columnAt(column)?.style ?? 0;
    },
    *cellsOfRow(row) {
      for (const { column, index } of store.cellsOfRow(row)) {
        yield { column, value: store.cell(index), style: store.style(index) };
      }
    },
    layout: { head, tail },
    rowHeight: (row) => scanned.heights.get(row) ?? null,
  };
}

/** Reads what stands inside `c` elements of one text of rows. */
class ValueReader {
  wasStruck = false;
  wasDate = false;
  private readonly openValue: string;
  private readonly openFormula: string;
  private readonly openInline: string;

  constructor(
    private readonly text: string,
    prefix: string,
    private readonly source: Pick<SheetSource, "strings" | "from1904">,
  ) {
    this.openValue = `<${prefix}v`;
    this.openFormula = `<${prefix}f`;
    this.openInline = `<${prefix}is`;
  }

  value(cell: ScannedCell): Cell {
    this.wasStruck = false;
    this.wasDate = false;
    if (cell.innerEnd === 0) return null;
    const { text } = this;
    if (cell.type === "inlineStr") return this.inline(cell);
    const open = this.find(this.openValue, cell);
    const hasValue = open >= 0;
    const start = hasValue ? text.indexOf(">", open) + 1 : 0;
    const end = hasValue && text[start - 2] !== "/" ? text.indexOf("<", start) : start;
    if (!hasValue || start === end) {
      const isFormula = this.find(this.openFormula, cell) >= 0;
      return isFormula && cell.type === "n" ? UNCALCULATED : null;
    }
    switch (cell.type) {
      case "n":
        return this.number(start, end);
      case "s":
        return this.shared(Number(this.plain(start, end)));
      case "b":
        return isTrue(this.plain(start, end).trim());
      case "e":
        return { error: decodeXml(text.slice(start, end)) };
      case "d":
        return this.isoDate(this.plain(start, end));
      default:
        return textOrBlank(decodeCellText(text.slice(start, end)));
    }
  }

  formula(cell: ScannedCell): SheetFormula | null {
    const { text } = this;
    if (cell.innerEnd === 0 || this.find(this.openFormula, cell) < 0) return null;
    const element = findElement(text.slice(cell.innerStart, cell.innerEnd), "f");
    if (element === null) return null;
    const { attributes } = element.tag;
    const group = attribute(attributes, "si");
    const kind = attribute(attributes, "t");
    return {
      text: decodeXml(text.slice(cell.innerStart + element.innerStart, cell.innerStart + element.innerEnd)),
      kind: kind === "array" || kind === "shared" || kind === "dataTable" ? kind : "normal",
      range: attribute(attributes, "ref"),
      group: group === null ? null : Number(group),
    };
  }

  /** Place of a tag inside a cell; the text behind it is not searched. */
  private find(tag: string, { innerStart, innerEnd }: ScannedCell): number {
    if (this.text.startsWith(tag, innerStart)) return innerStart;
    const at = this.text.slice(innerStart, innerEnd).indexOf(tag);
    return at < 0 ? -1 : innerStart + at;
  }

  private plain(start: number, end: number): string {
    return decodeXml(this.text.slice(start, end));
  }

  private number(start: number, end: number): Cell {
    const plain = this.plain(start, end);
    const number = Number(plain);
    return plain.trim() === "" ? null : Number.isFinite(number) ? number : textOrBlank(decodeCellText(plain));
  }

  private shared(index: number): Cell {
    const text = this.source.strings.texts[index];
    if (text === undefined) return { error: "#REF!", message: `the file holds no text number ${index}` };
    this.wasStruck = this.source.strings.struck.has(index);
    return textOrBlank(text);
  }

  private inline(cell: ScannedCell): Cell {
    const open = this.find(this.openInline, cell);
    if (open < 0) return null;
    const inner = this.text.slice(
      this.text.indexOf(">", open) + 1,
      this.text.lastIndexOf("<", cell.innerEnd - 1),
    );
    this.wasStruck = isRichStruck(inner);
    return textOrBlank(richText(inner));
  }

  /** ISO dates become the serial number that every other date is. */
  private isoDate(text: string): Cell {
    const moment = Date.parse(
      /[zZ]$|[+-]\d\d:\d\d$/.test(text) ? text : `${text.includes("T") ? text : `${text}T00:00`}Z`,
    );
    if (Number.isNaN(moment)) return text;
    this.wasDate = true;
    return moment / 86_400_000 + (this.source.from1904 ? FIRST_1970_OF_1904 : FIRST_1970);
  }
}

function textOrBlank(text: string): Cell {
  return text === "" ? null : text;
}

function readColumns(head: string): ColumnWidth[] {
  const columns: ColumnWidth[] = [];
  for (const tag of xmlTags(head)) {
    if (tag.name !== "col" || tag.kind === "close") continue;
    const width = attribute(tag.attributes, "width");
    columns.push({
      first: Number(attribute(tag.attributes, "min") ?? 1) - 1,
      last: Number(attribute(tag.attributes, "max") ?? 1) - 1,
      width: width === null ? null : Number(width),
      hidden: isTrue(attribute(tag.attributes, "hidden")),
      style: Number(attribute(tag.attributes, "style") ?? 0),
    });
  }
  return columns;
}

function readMerges(tail: string) {
  const merges: { top: number; left: number; bottom: number; right: number }[] = [];
  for (const list of findElements(tail, "mergeCells")) {
    for (const tag of xmlTags(tail.slice(list.innerStart, list.innerEnd))) {
      const range = tag.name === "mergeCell" ? parseRange(attribute(tag.attributes, "ref") ?? "") : null;
      if (range !== null) merges.push(range);
    }
  }
  return merges;
}

function readFrozen(head: string): { rows: number; columns: number } {
  const pane = findElement(head, "pane");
  const state = pane === null ? null : attribute(pane.tag.attributes, "state");
  if (pane === null || (state !== "frozen" && state !== "frozenSplit")) return { rows: 0, columns: 0 };
  return {
    rows: Number(attribute(pane.tag.attributes, "ySplit") ?? 0),
    columns: Number(attribute(pane.tag.attributes, "xSplit") ?? 0),
  };
}

function isSheetProtected(tail: string): boolean {
  const protection = findElement(tail, "sheetProtection");
  return protection !== null && isTrue(attribute(protection.tag.attributes, "sheet"));
}
