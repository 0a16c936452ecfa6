import type { Sheet } from "./sheet";

/**
 * The letters of a sheet's column, counted from 0: 0 is "A", 16383 is "XFD".
 *
 * @example columnLetters(26) // "AA"
 */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** "B3" of row 2, column 1, both counted from 0. */
export function addressAt(row: number, column: number): string {
  return columnLetters(column) + (row + 1);
}

/**
 * The address of a cell in the sheet's own coordinates, from its place in the used range.
 *
 * @example cellAddress(sheet, 11, 5) // "F12" where the used range begins at A1
 */
export function cellAddress(
  sheet: Pick<Sheet, "top" | "left" | "isTurned">,
  row: number,
  column: number,
): string {
  if (sheet.isTurned === true) return addressAt(sheet.left + column, sheet.top + row);
  return addressAt(sheet.top + row, sheet.left + column);
}
