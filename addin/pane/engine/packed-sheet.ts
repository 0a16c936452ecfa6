import type { Cell, Sheet } from "../../../core/schedule/sheet";
import type { OtherSheets } from "./other-sheets";

/** A sheet as plain data, to be sent to a worker. */
export interface PackedSheet {
  readonly name: string;
  readonly top: number;
  readonly left: number;
  readonly columnCount: number;
  readonly rows: readonly (readonly Cell[])[];
  /** by row * columnCount + column */
  readonly shown: ReadonlyMap<number, string>;
  readonly dates: ReadonlySet<number>;
  readonly datesFrom1904: boolean;
  readonly struck: ReadonlySet<number>;
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenColumns: ReadonlySet<number>;
  readonly merges: NonNullable<Sheet["merges"]>;
}

export function packSheet(sheet: Sheet): PackedSheet {
  const shown = new Map<number, string>();
  const dates = new Set<number>();
  const struck = new Set<number>();
  const hiddenRows = new Set<number>();
  const hiddenColumns = new Set<number>();
  const rows: Cell[][] = [];
  for (let row = 0; row < sheet.rowCount; row += 1) {
    const line: Cell[] = [];
    if (sheet.isHiddenRow?.(row)) hiddenRows.add(row);
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const key = row * sheet.columnCount + column;
      line.push(sheet.cell(row, column));
      const text = sheet.shown?.(row, column);
      if (text !== undefined) shown.set(key, text);
      if (sheet.isDate?.(row, column)) dates.add(key);
      if (sheet.isStruckThrough?.(row, column)) struck.add(key);
    }
    rows.push(line);
  }
  for (let column = 0; column < sheet.columnCount; column += 1) {
    if (sheet.isHiddenColumn?.(column)) hiddenColumns.add(column);
  }
  const { name, top, left, columnCount, merges = [], datesFrom1904 = false } = sheet;
  const marks = { shown, dates, struck, hiddenRows, hiddenColumns };
  return { name, top, left, columnCount, rows, ...marks, datesFrom1904, merges };
}

export function unpackSheet(packed: PackedSheet): Sheet {
  const { rows, columnCount } = packed;
  const key = (row: number, column: number): number => row * columnCount + column;
  return {
    name: packed.name,
    top: packed.top,
    left: packed.left,
    rowCount: rows.length,
    columnCount,
    cell: (row, column) => rows[row]?.[column] ?? null,
    rowCells: (row) => rows[row] ?? [],
    shown: (row, column) => packed.shown.get(key(row, column)),
    isDate: (row, column) => packed.dates.has(key(row, column)),
    datesFrom1904: packed.datesFrom1904,
    isStruckThrough: (row, column) => packed.struck.has(key(row, column)),
    isHiddenRow: (row) => packed.hiddenRows.has(row),
    isHiddenColumn: (column) => packed.hiddenColumns.has(column),
    merges: packed.merges,
  };
}

export interface PackedOtherSheets {
  readonly before: readonly PackedSheet[];
  readonly behind: readonly PackedSheet[];
}

export function packOtherSheets({ before, behind }: OtherSheets): PackedOtherSheets {
  return { before: before.map(packSheet), behind: behind.map(packSheet) };
}

export function unpackOtherSheets({ before, behind }: PackedOtherSheets): OtherSheets {
  return { before: before.map(unpackSheet), behind: behind.map(unpackSheet) };
}
