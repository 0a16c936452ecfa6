import { invalidArgument } from "./host-error";

export const MAX_ROWS = 1_048_576;
export const MAX_COLUMNS = 16_384;

/** A block of cells; rows and columns count from 0. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Reads `B2`, `$B$2:D9`, `A:A`, `3:5`, with or without a sheet's name before it. */
export function parseArea(address: string): Area {
  const plain = address.slice(address.lastIndexOf("!") + 1).replaceAll("$", "");
  const match = /^([A-Z]{1,3})?(\d+)?(?::([A-Z]{1,3})?(\d+)?)?$/i.exec(plain);
  if (match === null || plain === "") throw invalidArgument();
  const [, column, row] = match;
  const [lastColumn, lastRow] = plain.includes(":") ? [match[3], match[4]] : [column, row];
  const top = row === undefined ? 0 : Number(row) - 1;
  const left = column === undefined ? 0 : columnNumber(column);
  const bottom = lastRow === undefined ? MAX_ROWS - 1 : Number(lastRow) - 1;
  const right = lastColumn === undefined ? MAX_COLUMNS - 1 : columnNumber(lastColumn);
  return checkedArea({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
}

/** The area, refused where it leaves the sheet. */
export function checkedArea(area: Area): Area {
  const inside =
    area.row >= 0 &&
    area.column >= 0 &&
    area.rows > 0 &&
    area.columns > 0 &&
    area.row + area.rows <= MAX_ROWS &&
    area.column + area.columns <= MAX_COLUMNS;
  if (!inside) throw invalidArgument();
  return area;
}

export function areaName(area: Area): string {
  if (area.columns === MAX_COLUMNS) return `${area.row + 1}:${area.row + area.rows}`;
  if (area.rows === MAX_ROWS)
    return `${columnName(area.column)}:${columnName(area.column + area.columns - 1)}`;
  const first = `${columnName(area.column)}${area.row + 1}`;
  const last = `${columnName(area.column + area.columns - 1)}${area.row + area.rows}`;
  return first === last ? first : `${first}:${last}`;
}

export function overlaps(one: Area, other: Area): boolean {
  return (
    one.row < other.row + other.rows &&
    other.row < one.row + one.rows &&
    one.column < other.column + other.columns &&
    other.column < one.column + one.columns
  );
}

export function contains(area: Area, row: number, column: number): boolean {
  return overlaps(area, { row, column, rows: 1, columns: 1 });
}

function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function columnName(index: number): string {
  let name = "";
  for (let left = index + 1; left > 0; left = Math.floor((left - 1) / 26)) {
    name = String.fromCharCode(65 + ((left - 1) % 26)) + name;
  }
  return name;
}
