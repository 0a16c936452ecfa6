import { counted } from "../units/counted";
import type { ScheduleReading } from "./bar-row";
import { cellAddress } from "./cell-address";
import { shareOfColumn } from "./columns/table-proof";
import { type Cell, isCellError, type Sheet } from "./sheet";

/** Formulas in the cells that bars were read from, whose stored results the workbook does not vouch for. */
export interface DoubtedResults {
  readonly cells: number;
  readonly rows: number;
  /** the first of them, in the sheet's used range, from 0 */
  readonly first: { readonly row: number; readonly column: number };
}

/** share of the rows that must agree with a column before its stored results are believed */
const AGREE = 0.7;

/**
 * Null where every value that bars were read from can be believed as it stands: results of a column that
 * most rows agree with are not out of date, and a row that does not agree is told by itself.
 */
export function doubtedResults(
  sheet: Sheet,
  { tables, bars, proofs }: ScheduleReading,
): DoubtedResults | null {
  if (sheet.isDoubted === undefined) return null;
  const columnsOf = tables.map((table, at) => {
    const isProven = (column: number): boolean => {
      const share = shareOfColumn(proofs?.[at], column);
      return share !== null && share.tested > 0 && share.kept >= AGREE * share.tested;
    };
    return [...table.columns.values()].map(({ column }) => column).filter((column) => !isProven(column));
  });
  let first: DoubtedResults["first"] | null = null;
  let cells = 0;
  let rows = 0;
  let table = 0;
  for (const { row } of bars) {
    while ((tables[table + 1]?.headerTop ?? Number.POSITIVE_INFINITY) <= row) table += 1;
    const doubted = (columnsOf[table] ?? []).filter(
      (column) => sheet.isDoubted?.(row, column) === true && !hasNoResult(sheet.cell(row, column)),
    );
    if (doubted.length === 0) continue;
    first ??= { row, column: Math.min(...doubted) };
    cells += doubted.length;
    rows += 1;
  }
  return first === null ? null : { cells, rows, first };
}

/** A formula without a result is told as that: there is none to be out of date. */
const hasNoResult = (cell: Cell): boolean => isCellError(cell) && cell.uncalculated === true;

/** What is said of a sheet whose stored results are doubted. */
export function doubtedWords(sheet: Sheet, { cells, rows, first }: DoubtedResults): string {
  const at = cellAddress(sheet, first.row, first.column);
  return `sheet "${sheet.name}": ${counted(cells, "cell")} in ${counted(rows, "bar row")}, ${at} first, with formulas whose stored results may be out of date, as the file asks to be calculated when it is opened: open it in a spreadsheet program, save it, and read it again`;
}
