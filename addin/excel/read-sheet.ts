import type { Cell, Sheet } from "../../core/schedule/sheet";
import { WorkbookRefusal } from "../workbook/workbook-port";
import { isDateFormat } from "../xlsx/read/number-format";
import { excelErrorCode, isExcelApi, runBatch } from "./run-batch";
import type { Settings } from "./settings";

/** Cells of one request where a sheet is too large for a single one. */
const CELLS_PER_READ = 50_000;
/** Beyond it a sheet is filled down to the end of the grid by mistake. */
const MOST_CELLS = 4_000_000;

const ERROR_TEXT =
  /^#(REF!|VALUE!|N\/A|DIV\/0!|NAME\?|NULL!|NUM!|SPILL!|CALC!|BUSY!|GETTING_DATA|FIELD!|CONNECT!)$/;

interface Block {
  readonly values: readonly (readonly unknown[])[];
  readonly text: readonly (readonly string[])[];
  readonly formats: readonly (readonly string[])[];
  readonly rows: readonly Excel.RowProperties[];
}

interface Geometry {
  readonly top: number;
  readonly left: number;
  readonly rowCount: number;
  readonly columnCount: number;
  readonly hiddenColumns: ReadonlySet<number>;
  readonly merges: readonly { top: number; left: number; bottom: number; right: number }[];
}

/**
 * A frozen copy of a sheet's used range. One request; a sheet over the limits of Excel on the web is
 * read again in blocks of rows. Strike-through of part of a row costs one request more, and so do dates.
 */
export async function readSheet(name: string, settings: Settings): Promise<Sheet> {
  return runBatch(
    async (context) => {
      const sheet = context.workbook.worksheets.getItem(name);
      const whole = await readWhole(context, sheet, settings).catch((error: unknown) => {
        if (excelErrorCode(error) === "ResponsePayloadSizeLimitExceeded") return null;
        throw error;
      });
      if (whole === "empty") return emptySheet(name);
      const { geometry, blocks } = whole ?? (await readByRows(context, name));
      const rows = blocks.flatMap((block) => block.rows);
      const struck = await struckCells(context, name, geometry, rows);
      const datesFrom1904 = blocks.some(holdsDate) && (await countsFrom1904());
      return { ...frozenSheet(name, geometry, blocks, rows, struck), datesFrom1904 };
    },
    { sheet: name },
  );
}

/** Excel has no word for its date system, but its DATE counts in it: 2 January 1904 is 1 there. */
async function countsFrom1904(): Promise<boolean> {
  try {
    return await Excel.run(async (context) => {
      const serial = context.workbook.functions.date(1904, 1, 2).load("value");
      await context.sync();
      return serial.value === 1;
    });
  } catch {
    // an Excel without worksheet functions for add-ins: nearly every workbook counts from 1900
    return false;
  }
}

function holdsDate({ values, formats }: Block): boolean {
  const plain = new Set<string>();
  return formats.some((line, row) =>
    line.some((format, column) => {
      if (typeof values[row]?.[column] !== "number" || plain.has(format)) return false;
      if (isDateFormat(format)) return true;
      plain.add(format);
      return false;
    }),
  );
}

interface LoadedSheet {
  readonly geometry: Geometry;
  readonly blocks: readonly Block[];
}

/** Everything in one request; null where Excel answered without the cells. */
async function readWhole(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  settings: Settings,
): Promise<LoadedSheet | "empty" | null> {
  const used = sheet.getUsedRangeOrNullObject(true).untrack();
  const geometry = askGeometry(used);
  const block = askBlock(used);
  const answered = settings.ask(context);
  await context.sync();
  answered();
  if (used.isNullObject) return "empty";
  const read = block();
  return read === null ? null : { geometry: geometry(), blocks: [read] };
}

async function readByRows(context: Excel.RequestContext, name: string): Promise<LoadedSheet> {
  const used = context.workbook.worksheets.getItem(name).getUsedRange(true).untrack();
  const asked = askGeometry(used);
  await context.sync();
  const geometry = asked();
  const cells = geometry.rowCount * geometry.columnCount;
  if (cells > MOST_CELLS) {
    throw new WorkbookRefusal(
      `sheet ${name} uses ${cells} cells, more than ${MOST_CELLS}: delete what stands below and beside the schedule, or copy the schedule to a sheet of its own`,
    );
  }
  let rowsAtOnce = Math.max(1, Math.floor(CELLS_PER_READ / geometry.columnCount));
  const blocks: Block[] = [];
  for (let row = 0; row < geometry.rowCount; ) {
    const count = Math.min(rowsAtOnce, geometry.rowCount - row);
    const block = await readRows(context, name, geometry, row, count);
    if (block !== null) {
      blocks.push(block);
      row += count;
    } else if (count > 1) rowsAtOnce = Math.ceil(count / 2);
    else
      throw new WorkbookRefusal(
        `row ${geometry.top + row + 1} of ${name} is too long for Excel to hand over`,
      );
  }
  return { geometry, blocks };
}

/** Null where the rows are more than Excel hands over at once. */
async function readRows(
  context: Excel.RequestContext,
  name: string,
  geometry: Geometry,
  row: number,
  count: number,
): Promise<Block | null> {
  const sheet = context.workbook.worksheets.getItem(name);
  const block = askBlock(
    sheet.getRangeByIndexes(geometry.top + row, geometry.left, count, geometry.columnCount),
  );
  try {
    await context.sync();
    return block();
  } catch (error) {
    if (excelErrorCode(error) === "ResponsePayloadSizeLimitExceeded") return null;
    throw error;
  }
}

function askGeometry(range: Excel.Range): () => Geometry {
  range.load("rowIndex,columnIndex,rowCount,columnCount");
  const columns = range.getColumnProperties({ columnHidden: true });
  const merged = isExcelApi("1.13") ? range.getMergedAreasOrNullObject().untrack() : null;
  merged?.load("areas/items/rowIndex,areas/items/columnIndex,areas/items/rowCount,areas/items/columnCount");
  return () => {
    const top = range.rowIndex;
    const left = range.columnIndex;
    const hidden = columns.value.flatMap((column, index) => (column.columnHidden ? [index] : []));
    const areas = merged === null || merged.isNullObject ? [] : merged.areas.items;
    return {
      top,
      left,
      rowCount: range.rowCount,
      columnCount: range.columnCount,
      hiddenColumns: new Set(hidden),
      merges: areas.map((area) => ({
        top: area.rowIndex - top,
        left: area.columnIndex - left,
        bottom: area.rowIndex - top + area.rowCount - 1,
        right: area.columnIndex - left + area.columnCount - 1,
      })),
    };
  };
}

/** Excel answers null for the cells of a range that it finds too large. */
function askBlock(range: Excel.Range): () => Block | null {
  range.untrack().load("values,text,numberFormat");
  const rows = range.getRowProperties({ rowHidden: true, format: { font: { strikethrough: true } } });
  return () =>
    range.values === null
      ? null
      : { values: range.values, text: range.text, formats: range.numberFormat, rows: rows.value };
}

/** Rows struck through in part, cell by cell: `row * columnCount + column`. */
async function struckCells(
  context: Excel.RequestContext,
  name: string,
  geometry: Geometry,
  rows: readonly Excel.RowProperties[],
): Promise<ReadonlySet<number>> {
  const mixed = rows.flatMap((row, index) => (row.format?.font?.strikethrough === null ? [index] : []));
  const found = new Set<number>();
  const rowsAtOnce = Math.max(1, Math.floor(CELLS_PER_READ / geometry.columnCount));
  for (let from = 0; from < mixed.length; from += rowsAtOnce) {
    const sheet = context.workbook.worksheets.getItem(name);
    const asked = mixed.slice(from, from + rowsAtOnce).map((row) => ({
      row,
      cells: sheet
        .getRangeByIndexes(geometry.top + row, geometry.left, 1, geometry.columnCount)
        .untrack()
        .getCellProperties({ format: { font: { strikethrough: true } } }),
    }));
    await context.sync();
    for (const { row, cells } of asked) {
      for (const [column, cell] of (cells.value[0] ?? []).entries()) {
        if (cell.format?.font?.strikethrough === true) found.add(row * geometry.columnCount + column);
      }
    }
  }
  return found;
}

function frozenSheet(
  name: string,
  geometry: Geometry,
  blocks: readonly Block[],
  rows: readonly Excel.RowProperties[],
  struck: ReadonlySet<number>,
): Sheet {
  const values = blocks.flatMap((block) => block.values);
  const text = blocks.flatMap((block) => block.text);
  const formats = blocks.flatMap((block) => block.formats);
  const cell = (row: number, column: number): Cell => cellOf(values[row]?.[column]);
  return {
    name,
    top: geometry.top,
    left: geometry.left,
    rowCount: geometry.rowCount,
    columnCount: geometry.columnCount,
    cell,
    shown: (row, column) => {
      const shown = text[row]?.[column];
      return shown === undefined || shown === String(values[row]?.[column] ?? "") ? undefined : shown;
    },
    isDate: (row, column) =>
      typeof values[row]?.[column] === "number" && isDateFormat(formats[row]?.[column] ?? "General"),
    isHiddenRow: (row) => rows[row]?.rowHidden === true,
    isHiddenColumn: (column) => geometry.hiddenColumns.has(column),
    isStruckThrough: (row, column) => {
      const whole = rows[row]?.format?.font?.strikethrough;
      return whole === null ? struck.has(row * geometry.columnCount + column) : whole === true;
    },
    merges: geometry.merges,
  };
}

function cellOf(value: unknown): Cell {
  if (typeof value === "number" || typeof value === "boolean") return value;
  if (typeof value !== "string" || value === "") return null;
  return ERROR_TEXT.test(value) ? { error: value } : value;
}

function emptySheet(name: string): Sheet {
  return { name, top: 0, left: 0, rowCount: 0, columnCount: 0, cell: () => null };
}
