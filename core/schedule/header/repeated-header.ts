import type { TableLayout } from "../columns/decide-columns";
import type { Cell } from "../sheet";

const REPEATED_SHARE = 0.8;
const LEAST_NUMBERED = 5;

/** True where a row says a header of these schedules again, as on the next page of a list. */
export function repeatsHeader(
  layouts: readonly TableLayout[],
  cells: readonly Cell[],
  filled: readonly number[],
): boolean {
  if (filled.length < 2) return false;
  return layouts.some(({ headerTexts, left, right }) =>
    headerTexts.some((texts) => {
      if (texts.size < 2) return false;
      let same = 0;
      let own = 0;
      for (const column of filled) {
        if (column < left || column > right) continue;
        own += 1;
        if (texts.get(column) === String(cells[column]).trim().toLowerCase()) same += 1;
      }
      return own > 1 && same >= own * REPEATED_SHARE && same * 2 >= texts.size;
    }),
  );
}

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
