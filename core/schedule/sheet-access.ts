import { cellAddress, columnLetters } from "./cell-address";
import { cleanText } from "./cells/clean-text";
import { rowWithoutNoise, withoutNoise } from "./cells/without-noise";
import type { ColumnCorrection, ReadOptions } from "./read-options";
import type { Cell, Sheet } from "./sheet";

const LARGEST_MERGE = 100_000;

/** Rows, merged cells and the user's decisions of one sheet, asked the same way by every step. */
export function sheetAccess(sheet: Sheet, options: ReadOptions) {
  const { columnCount, rowCount } = sheet;
  const across = new Map<string, { row: number; column: number }>();
  const down = new Map<number, { column: number; top: number }[]>();
  for (const { top, left, bottom, right } of sheet.merges ?? []) {
    if ((bottom - top + 1) * (right - left + 1) > LARGEST_MERGE || top < 0 || left < 0) continue;
    for (let column = left; column <= right; column += 1) {
      if (column > left)
        for (let row = top; row <= bottom; row += 1)
          across.set(`${row}/${column}`, { row: top, column: left });
      if (column > left || bottom === top) continue;
      for (let row = top + 1; row <= Math.min(bottom, rowCount - 1); row += 1) {
        const here = down.get(row);
        if (here === undefined) down.set(row, [{ column, top }]);
        else here.push({ column, top });
      }
    }
  }
  const corrections = new Map<string, ColumnCorrection>();
  for (const correction of options.columns ?? []) corrections.set(plain(correction.column), correction);
  const confirmed = new Set(options.confirmed ?? []);

  return {
    corrections: corrections.size,
    /** All cells of a row, its vertically merged ones filled from their top. */
    cells(row: number): readonly Cell[] {
      const own = rowOf(row);
      const merged = down.get(row);
      if (merged === undefined) return own;
      const filled = [...own];
      for (const { column, top } of merged) {
        while (filled.length <= column) filled.push(null);
        filled[column] ??= rowOf(top)[column] ?? null;
      }
      return filled;
    },
    mergedText(row: number, column: number): string | null {
      const from = across.get(`${row}/${column}`);
      // a merge over rows too gives its text once, in its top row
      if (from === undefined || from.row !== row) return null;
      const cell = rowOf(from.row)[from.column];
      return typeof cell === "string" ? cell : null;
    },
    /** what was said of the column by its letter as such, else of the heading, else by a letter that is none */
    correction(text: string, column: number): ColumnCorrection | null {
      if (corrections.size === 0) return null;
      const byPlace = corrections.get(placeOf(column));
      if (byPlace?.isLetter === true) return byPlace;
      const byText = text === "" ? undefined : corrections.get(plain(text));
      return (byText?.isLetter === true && isHere(byText.column) ? undefined : byText) ?? byPlace ?? null;
    },
    isConfirmed(code: string, row: number, column: number): boolean {
      if (confirmed.size === 0) return false;
      return confirmed.has(code) || (row >= 0 && confirmed.has(cellAddress(sheet, row, column)));
    },
  };

  /** The letter of a column; where bars stand in columns, the number of the row. */
  function placeOf(column: number): string {
    const at = sheet.left + column;
    return sheet.isTurned === true ? String(at + 1) : columnLetters(at).toLowerCase();
  }

  /** True where the sheet has a column of that letter. */
  function isHere(letter: string): boolean {
    if (sheet.isTurned === true) return false;
    for (let column = 0; column < columnCount; column += 1)
      if (placeOf(column) === letter.toLowerCase()) return true;
    return false;
  }

  function rowOf(row: number): readonly Cell[] {
    if (sheet.rowCells !== undefined) return rowWithoutNoise(sheet.rowCells(row));
    const cells = new Array<Cell>(columnCount);
    for (let column = 0; column < columnCount; column += 1)
      cells[column] = withoutNoise(sheet.cell(row, column));
    return cells;
  }
}

function plain(text: string): string {
  return cleanText(text).replace(/\s+/g, " ").toLowerCase();
}
