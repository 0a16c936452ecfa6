import type { Standard } from "../standards/port";
import { findTables } from "./evidence/index";
import { LEAST_WORDS } from "./header/header-blocks";
import { knownWords } from "./header/known-words";
import type { Cell, Sheet } from "./sheet";

const MOST_ROWS_LOOKED = 120;
const MOST_HEAD_COLUMNS = 3;
const NEAR_A_HEADER = 3;

/**
 * The sheet with rows for its columns where its bars stand in columns, one beside the other; the sheet itself where
 * they do not. `isTurned` of it makes `cellAddress` give the cell's own place.
 */
export function uprightSheet(sheet: Sheet, standard: Standard): Sheet {
  return barsStandInColumns(sheet, standard) ? turnedSheet(sheet) : sheet;
}

function barsStandInColumns(sheet: Sheet, standard: Standard): boolean {
  const { rowCount, columnCount } = sheet;
  if (rowCount > MOST_ROWS_LOOKED || columnCount < LEAST_WORDS) return false;
  const rows = Array.from({ length: rowCount }, (_, row) => cellsOf(sheet, row));
  // letters are marks or types of bars as often as they name dimensions
  if (rows.some((cells) => knownWords(cells.filter(isWordy)) >= NEAR_A_HEADER)) return false;
  const heads = Array.from({ length: Math.min(MOST_HEAD_COLUMNS, columnCount) }, (_, column) =>
    knownWords(rows.map((cells) => cells[column] ?? null)),
  );
  return Math.max(...heads) >= LEAST_WORDS || findTables(rows, standard).isTransposed;
}

/** Of signs that are syllables or words two make a word: "규격", "直径". */
function isWordy(cell: Cell): boolean {
  return typeof cell === "string" && (cell.trim().length > 2 || WORD_OF_SIGNS.test(cell));
}

const WORD_OF_SIGNS =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Thai}]{2}/u;

function turnedSheet(sheet: Sheet): Sheet {
  const { name, top, left, rowCount, columnCount, isDate, shown } = sheet;
  const columns = Array.from({ length: columnCount }, (_, column) =>
    Array.from({ length: rowCount }, (_, row) => sheet.cell(row, column)),
  );
  return {
    name,
    top: left,
    left: top,
    rowCount: columnCount,
    columnCount: rowCount,
    isTurned: true,
    cell: (row, column) => sheet.cell(column, row),
    rowCells: (row) => columns[row] ?? [],
    ...(shown === undefined ? {} : { shown: (row: number, column: number) => sheet.shown?.(column, row) }),
    ...(isDate === undefined ? {} : { isDate: (row: number, column: number) => isDate(column, row) }),
    ...(sheet.datesFrom1904 === undefined ? {} : { datesFrom1904: sheet.datesFrom1904 }),
    isHiddenRow: (row) => sheet.isHiddenColumn?.(row) ?? false,
    isHiddenColumn: (column) => sheet.isHiddenRow?.(column) ?? false,
    isStruckThrough: (row, column) => sheet.isStruckThrough?.(column, row) ?? false,
    fill: (row, column) => sheet.fill?.(column, row),
    merges: (sheet.merges ?? []).map((one) => ({
      top: one.left,
      left: one.top,
      bottom: one.right,
      right: one.bottom,
    })),
  };
}

function cellsOf(sheet: Sheet, row: number): readonly Cell[] {
  if (sheet.rowCells !== undefined) return sheet.rowCells(row);
  return Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column));
}
