import type { Cell } from "../sheet";

const LEAST_NUMBERED = 5;

/** "1 2 3 4 …", "A B C …", "(a) (b) (c) = (a) x (b) …": the numbers or letters of the columns. */
export function numbersColumns(cells: readonly Cell[], filled: readonly number[]): boolean {
  if (filled.length < LEAST_NUMBERED) return false;
  let before: number | null = null;
  for (const column of filled) {
    const number = placeNamed(cells[column] ?? null);
    if (number === null || (before === null ? number > 2 : number !== before + 1)) return false;
    before = number;
  }
  return true;
}

const PLACE = /^[([]?\s*(?:(\d{1,2})|([a-z]))\s*[)\]]?(?:\s*=.*)?$/i;
const LONGEST_PLACE = 24;

/** 3 of "3", "(3)", "c" and "(c) = (a) x (b)". */
function placeNamed(cell: Cell): number | null {
  const text = String(cell).trim();
  const found = text.length > LONGEST_PLACE ? null : PLACE.exec(text);
  if (found === null) return null;
  return found[1] === undefined ? (found[2] ?? "").toLowerCase().charCodeAt(0) - 96 : Number(found[1]);
}
