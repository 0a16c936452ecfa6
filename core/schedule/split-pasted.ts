import type { ScheduleReading, TableReading } from "./bar-row";
import { plainBar } from "./rows/stored-bar";
import type { Cell, Sheet } from "./sheet";

const GAP = /\t|\s{2,}/;
const LEAST_ROWS = 3;
const LEAST_PARTS = 4;

/**
 * The sheet with each row split at tabs and wide gaps, where nearly every row is one text in one
 * cell, as a list pasted out of a page is. Null where the sheet is no such paste.
 */
export function splitPasted(sheet: Sheet, cellsOf: (row: number) => readonly Cell[]): Sheet | null {
  let single = 0;
  let split = 0;
  const limit = Math.min(sheet.rowCount, 60);
  for (let row = 0; row < limit; row += 1) {
    const filled = cellsOf(row).filter((cell) => cell !== null && cell !== undefined && cell !== "");
    if (filled.length === 0) continue;
    if (filled.length > 1) return null;
    single += 1;
    if (partsOf(filled[0] ?? null).length >= LEAST_PARTS) split += 1;
  }
  if (split < LEAST_ROWS || split * 2 < single) return null;
  const rows: Cell[][] = [];
  for (let row = 0; row < sheet.rowCount; row += 1) {
    const filled = cellsOf(row).find((cell) => cell !== null && cell !== undefined && cell !== "");
    rows.push(partsOf(filled ?? null));
  }
  const columnCount = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return {
    name: sheet.name,
    top: sheet.top,
    left: sheet.left,
    rowCount: sheet.rowCount,
    columnCount,
    cell: (row, column) => rows[row]?.[column] ?? null,
    rowCells: (row) => rows[row] ?? [],
    ...(sheet.isHiddenRow === undefined
      ? {}
      : { isHiddenRow: (row: number) => sheet.isHiddenRow?.(row) ?? false }),
  };
}

function partsOf(cell: Cell): Cell[] {
  if (typeof cell !== "string") return cell === null ? [] : [cell];
  return cell
    .trim()
    .split(GAP)
    .filter((part) => part !== "");
}

/** A pasted list stands in one column of the sheet, so every column of the reading is that one. */
export function inOneColumn(reading: ScheduleReading): ScheduleReading {
  const moved = new Map(reading.tables.map((table) => [table, tableInOneColumn(table)]));
  const tableOf = (table: TableReading): TableReading => moved.get(table) ?? table;
  return {
    ...reading,
    tables: reading.tables.map(tableOf),
    bars: reading.bars.map((bar) => ({
      ...plainBar(bar),
      table: tableOf(bar.table),
      problems: bar.problems?.map((problem) => ({ ...problem, column: 0 })) ?? null,
    })),
    totals: reading.totals.map((line) =>
      line.table === undefined ? line : { ...line, table: tableOf(line.table) },
    ),
    pasted: true,
  };
}

function tableInOneColumn(table: TableReading): TableReading {
  const columns = [...table.columns].map(([kind, column]) => [kind, { ...column, column: 0 }] as const);
  return { ...table, columns: new Map(columns) };
}
