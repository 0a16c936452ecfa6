/** An error value that stands in a cell, such as "#REF!". */
export interface CellError {
  readonly error: string;
  readonly message?: string;
  /** a formula that no program has calculated yet */
  readonly uncalculated?: true;
}

/** What a cell holds. Blank is null. Dates are serial numbers with `isDate` of the sheet. */
export type Cell = string | number | boolean | null | CellError;

export function isCellError(cell: Cell): cell is CellError {
  return typeof cell === "object" && cell !== null;
}

/** Why an error cell was not read, in words; a host may give a better reason than the error's name. */
export function cellErrorReason({ error, message }: CellError): string {
  return message ?? `the cell holds the error ${error}`;
}

/**
 * A worksheet as core sees it; every surface brings one. Rows and columns count from 0 within the
 * used range, whose first cell is (`top`, `left`) of the sheet, also from 0.
 */
export interface Sheet {
  readonly name: string;
  readonly top: number;
  readonly left: number;
  readonly rowCount: number;
  readonly columnCount: number;
  cell(row: number, column: number): Cell;
  /** All cells of a row from its first column, where the host holds them so; may end early. */
  rowCells?(row: number): readonly Cell[];
  /** What the user sees, where it differs from the value: number formats, parentheses. */
  shown?(row: number, column: number): string | undefined;
  isDate?(row: number, column: number): boolean;
  /** Serial numbers of dates count from 1904, as files of old Macs have it, and not from 1900. */
  readonly datesFrom1904?: boolean;
  /** A formula whose stored result the file itself does not vouch for. */
  isDoubted?(row: number, column: number): boolean;
  isHiddenRow?(row: number): boolean;
  isHiddenColumn?(column: number): boolean;
  isStruckThrough?(row: number, column: number): boolean;
  /** Fill colour that the user gave the cell, such as "#FFFF00"; undefined where there is none. */
  fill?(row: number, column: number): string | undefined;
  /** Its bars stand in columns on the user's sheet: rows and columns are exchanged here. */
  readonly isTurned?: true;
  /** The sheet before it in its book, whose list may go on here without a header. */
  readonly follows?: Sheet;
  /** Rows of the other sheets of its book that are short enough to be summaries; looked at only where a question is open. */
  readonly elsewhere?: () => readonly RowElsewhere[];
  /** Rows of the sums that stood beside the list and were taken from its rows. */
  readonly beside?: readonly (readonly Cell[])[];
  /** Merged ranges, in the same coordinates. */
  readonly merges?: readonly { top: number; left: number; bottom: number; right: number }[];
}

/** A row of another sheet of the book. */
export interface RowElsewhere {
  readonly cells: readonly Cell[];
  /** the address of a cell of it, its sheet named */
  at(column: number): string;
}

const NO_CELLS: readonly Cell[] = [];

/** A sheet over rows of values, its first cell at A1. */
export function sheetFromRows(name: string, rows: readonly (readonly Cell[])[]): Sheet {
  const columnCount = rows.reduce((widest, row) => Math.max(widest, row.length), 0);
  return {
    name,
    top: 0,
    left: 0,
    rowCount: rows.length,
    columnCount,
    cell: (row, column) => rows[row]?.[column] ?? null,
    rowCells: (row) => rows[row] ?? NO_CELLS,
  };
}
