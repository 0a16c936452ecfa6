import { type BarRow, type Cell, type ColumnKind, isCellError, type Sheet } from "../../../core/schedule";
import { cellAddress } from "../../../core/schedule/cell-address";

/** One cell of a bar's row: what stands there, and how a formula of another sheet names it. */
export interface RowCell {
  readonly content: Cell;
  readonly address: string;
}

/** The row's cell of a column; null where its table has none. */
export function cellOf(sheet: Sheet, { table, row }: BarRow, kind: ColumnKind): RowCell | null {
  const column = table.columns.get(kind)?.column;
  if (column === undefined) return null;
  return { content: sheet.cell(row, column), address: addressOf(sheet, row, column) };
}

/** Address of a cell of the used range, from 0, with its sheet. */
export function addressOf(sheet: Sheet, row: number, column: number): string {
  return `'${sheet.name.replaceAll("'", "''")}'!${cellAddress(sheet, row, column)}`;
}

/** What a cell says, as a worksheet function takes it for a label. */
export function saidIn(sheet: Sheet, row: number, column: number): string {
  const value = sheet.cell(row, column);
  return value === null || isCellError(value) ? "" : String(value).trim();
}
