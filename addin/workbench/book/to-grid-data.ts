import { translateFormulaToR1C1 } from "@borgar/fx";
import type { ICellData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { BooleanNumber, CellValueType, isTextFormat, LocaleType } from "@univerjs/core";
import { addressAt } from "../../../core/schedule/cell-address";
import { type Cell, isCellError } from "../../../core/schedule/sheet";
import { parseRange } from "../../workbook/cell-address";
import type { CellFormat } from "../../xlsx/read/cell-styles";
import type { Workbook } from "../../xlsx/read/open-workbook";
import type { SheetReading } from "../../xlsx/read/read-sheet";
import { readTables, type WorkbookTable } from "../../xlsx/read/read-tables";
import type { SheetFormula } from "../../xlsx/read/sheet-formula";
import { gridFilter } from "./grid-filter";
import { gridFormula } from "./grid-formula";
import { gridStyle } from "./grid-looks";
import { withoutTables } from "./without-tables";

/** Room about what a sheet holds; the grid grows when that is used. */
const SPARE_ROWS = 100;
const SPARE_COLUMNS = 12;
const FEWEST_COLUMNS = 26;
export const PX_PER_POINT = 96 / 72;
/** Width of a digit of the usual face, and the cell's padding, px. */
export const DIGIT = 7;
export const PADDING = 5;
const LINE_HEIGHT = 18;
const DEFAULT_WIDTH = 88;
const ALL_SHEETS = "AllDefaultWorkbook";
const NAMES = "SHEET_DEFINED_NAME_PLUGIN";
const FILTERS = "SHEET_FILTER_PLUGIN";

/** A file's workbook in the grid's own form, with the readings it was made from. */
export interface GridBook {
  readonly data: IWorkbookData;
  readonly readings: readonly SheetReading[];
}

export function toGridData(workbook: Workbook, id: string, name: string): GridBook {
  const readings = workbook.sheets.map((sheet) => workbook.read(sheet.name, { formulas: true }));
  return { data: gridData(workbook, readings, id, name), readings };
}

/** The grid's data of sheets that were read; made anew each time, as the grid writes into what it is given. */
export function gridData(
  workbook: Workbook,
  readings: readonly SheetReading[],
  id: string,
  name: string,
): IWorkbookData {
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  const tables = readTables(workbook);
  const sheetOrder = workbook.sheets.map(({ visible }, index) => {
    const sheetId = `sheet-${index + 1}`;
    sheets[sheetId] = gridSheet(readings[index] as SheetReading, sheetId, visible, workbook.formats, tables);
    return sheetId;
  });
  const filters = Object.fromEntries(
    readings.flatMap((reading, index) => {
      const filter = gridFilter(reading);
      return filter === null ? [] : [[sheetOrder[index], filter]];
    }),
  );
  const styles = Object.fromEntries(
    workbook.formats.map((format, index) => [styleId(index), gridStyle(format, workbook.formats[0] ?? {})]),
  );
  const names = workbook.names.map(({ name: text, refersTo, sheetIndex }, index) => ({
    id: `name-${index}`,
    name: text,
    formulaOrRefString: `=${withoutTables(gridFormula(refersTo), tables, null)}`,
    localSheetId: sheetIndex === null ? ALL_SHEETS : (sheetOrder[sheetIndex] ?? ALL_SHEETS),
  }));
  return {
    id,
    name,
    appVersion: "0.25.1",
    locale: LocaleType.EN_US,
    styles,
    sheetOrder,
    sheets,
    resources: [
      { name: NAMES, data: JSON.stringify(Object.fromEntries(names.map((each) => [each.id, each]))) },
      { name: FILTERS, data: JSON.stringify(filters) },
    ],
  };
}

const styleId = (index: number): string => `s${index}`;

function gridSheet(
  reading: SheetReading,
  id: string,
  visible: boolean,
  formats: readonly CellFormat[],
  tables: readonly WorkbookTable[],
): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, { h?: number; hd?: BooleanNumber }> = {};
  const columns = columnData(reading);
  const content = reading.hasFormulas ? formulaContent(reading, id, tables) : gridValue;
  const styles = formats.map((_, index) => styleId(index));
  for (const row of reading.rowNumbers) {
    const line: Record<number, ICellData> = {};
    for (const { column, value, style } of reading.cellsOfRow(row)) {
      const cell: ICellData = content(value, row, column);
      if (style !== 0) cell.s = styles[style] ?? styleId(style);
      // a cell formatted as text keeps what is typed: there the grid's own apostrophe would stay in it
      const isText = isTextFormat(formats[style]?.numberFormat ?? "");
      if (isText && cell.t === CellValueType.FORCE_STRING) cell.t = CellValueType.STRING;
      line[column] = cell;
    }
    cellData[row] = line;
    const height = reading.rowHeight(row);
    if (height !== null) rowData[row] = { h: Math.round(height * PX_PER_POINT) };
    else if (wraps(line, formats)) rowData[row] = { h: wrappedHeight(line, columns) };
  }
  // rows that a filter leaves out are hidden by the filter, and come back with it
  const filteredOut = new Set(gridFilter(reading)?.cachedFilteredOut);
  for (let row = 0; row < reading.rowCount; row += 1) {
    if (reading.isHiddenRow?.(row) && !filteredOut.has(reading.top + row)) {
      rowData[reading.top + row] = { ...rowData[reading.top + row], hd: BooleanNumber.TRUE };
    }
  }
  const { frozen } = reading;
  return {
    id,
    name: reading.name,
    hidden: visible ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    rowCount: reading.top + reading.rowCount + SPARE_ROWS,
    columnCount: Math.max(reading.left + reading.columnCount + SPARE_COLUMNS, FEWEST_COLUMNS),
    defaultRowHeight: 22,
    cellData,
    rowData,
    columnData: columns,
    mergeData: (reading.merges ?? []).map(({ top, left, bottom, right }) => ({
      startRow: reading.top + top,
      startColumn: reading.left + left,
      endRow: reading.top + bottom,
      endColumn: reading.left + right,
    })),
    freeze: {
      xSplit: frozen.columns,
      ySplit: frozen.rows,
      startRow: frozen.rows > 0 ? frozen.rows : -1,
      startColumn: frozen.columns > 0 ? frozen.columns : -1,
    },
  };
}

const wraps = (line: Readonly<Record<number, ICellData>>, formats: readonly CellFormat[]): boolean =>
  Object.values(line).some(({ s }) => typeof s === "string" && formats[Number(s.slice(1))]?.wrap === true);

/** px that the row's longest wrapped text takes: a file leaves a row's height out where it follows its text. */
function wrappedHeight(
  line: Readonly<Record<number, ICellData>>,
  columns: ReturnType<typeof columnData>,
): number {
  let lines = 1;
  for (const [column, { v }] of Object.entries(line)) {
    if (typeof v !== "string") continue;
    const room = Math.max(1, Math.floor(((columns[Number(column)]?.w ?? DEFAULT_WIDTH) - PADDING) / DIGIT));
    lines = Math.max(lines, linesOf(v, room));
  }
  return lines * LINE_HEIGHT + PADDING;
}

function linesOf(text: string, room: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(/\s+/)) {
    if (used > 0 && used + 1 + word.length > room) {
      lines += 1;
      used = 0;
    }
    used += (used > 0 ? 1 : 0) + word.length;
  }
  return lines;
}

function columnData(reading: SheetReading) {
  const data: Record<number, { w?: number; hd?: BooleanNumber }> = {};
  const last = reading.left + reading.columnCount + SPARE_COLUMNS;
  for (const { first, last: end, width, hidden } of reading.columns) {
    for (let column = first; column <= Math.min(end, last); column += 1) {
      data[column] = {
        ...(width !== null && { w: Math.round(width * DIGIT + PADDING) }),
        ...(hidden && { hd: BooleanNumber.TRUE }),
      };
    }
  }
  return data;
}

/** Cells that only hold part of an array formula's result: the grid fills them itself. */
function spilledPlaces(reading: SheetReading): ReadonlySet<string> {
  const places = new Set<string>();
  for (const row of reading.rowNumbers) {
    for (const { column } of reading.cellsOfRow(row)) {
      const formula = reading.formulaAt(row, column);
      const range = formula?.kind === "array" && formula.range !== null ? parseRange(formula.range) : null;
      if (range === null) continue;
      for (let r = range.top; r <= range.bottom; r += 1) {
        for (let c = range.left; c <= range.right; c += 1)
          if (r !== row || c !== column) places.add(`${r} ${c}`);
      }
    }
  }
  return places;
}

/**
 * A value with its type said, so that the grid never takes a text such as "00" for a number. An error with
 * a message stands for a result that was never calculated: the grid calculates it.
 */
export function gridValue(value: Cell): Pick<ICellData, "v" | "t"> {
  if (value === null) return {};
  if (isCellError(value))
    return value.message === undefined ? { v: value.error, t: CellValueType.STRING } : {};
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: looksElse(value) ? CellValueType.FORCE_STRING : CellValueType.STRING };
}

/** The grid makes a number of a plain text such as "01" when its cell is only made bold. */
function looksElse(text: string): boolean {
  return /^(true|false)$/i.test(text) || (text.trim() !== "" && !Number.isNaN(Number(text)));
}

/** What a cell of a sheet with formulas holds. */
function formulaContent(reading: SheetReading, sheetId: string, tables: readonly WorkbookTable[]) {
  const share = formulaSharer(sheetId, (text, row, column) =>
    withoutTables(`=${gridFormula(text)}`, tables, { sheet: reading.name, row, column }),
  );
  const spilled = spilledPlaces(reading);
  return (value: Cell, row: number, column: number): Pick<ICellData, "v" | "t" | "f" | "si"> =>
    spilled.has(`${row} ${column}`)
      ? {}
      : { ...gridValue(value), ...share(reading.formulaAt(row, column), row, column) };
}

/** The grid parses a shared formula once; without sharing, 40,000 formulas freeze it for seconds. */
function formulaSharer(sheetId: string, shown: (text: string, row: number, column: number) => string) {
  const seen = new Map<string, string>();
  return (formula: SheetFormula | undefined, row: number, column: number): Pick<ICellData, "f" | "si"> => {
    if (formula === undefined || formula.kind === "dataTable") return {};
    if (formula.kind === "shared") {
      const si = `${sheetId}-file-${formula.group}`;
      return formula.text === "" ? { si } : { f: shown(formula.text, row, column), si };
    }
    const f = shown(formula.text, row, column);
    const relative = relativeForm(f, row, column);
    if (relative === null) return { f };
    const known = seen.get(relative);
    if (known !== undefined) return { si: known };
    const si = `${sheetId}-${seen.size}`;
    seen.set(relative, si);
    return { f, si };
  };
}

function relativeForm(formula: string, row: number, column: number): string | null {
  try {
    return translateFormulaToR1C1(formula, addressAt(row, column));
  } catch {
    return null;
  }
}
