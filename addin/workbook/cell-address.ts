/** A cell by row and column, both from 0. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

export const LAST_ROW = 1_048_575;
export const LAST_COLUMN = 16_383;

/** Place of "B3" or "$B$3"; null where the text is no cell of a sheet. */
export function parseAddress(text: string): CellPlace | null {
  const match = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})$/.exec(text);
  if (match === null) return null;
  let column = 0;
  for (const letter of match[1]!.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  const row = Number(match[2]) - 1;
  return row > LAST_ROW || column - 1 > LAST_COLUMN ? null : { row, column: column - 1 };
}

/** Corners of "B3:D9" or of a single cell; null where the text is neither. */
export function parseRange(
  text: string,
): { top: number; left: number; bottom: number; right: number } | null {
  const [first, last = first, more] = text.split(":");
  const start = parseAddress(first ?? "");
  const end = parseAddress(last ?? "");
  if (start === null || end === null || more !== undefined) return null;
  return {
    top: Math.min(start.row, end.row),
    left: Math.min(start.column, end.column),
    bottom: Math.max(start.row, end.row),
    right: Math.max(start.column, end.column),
  };
}
