import type { TableLayout } from "../columns/decide-columns";
import type { Cell } from "../sheet";

const REPEATED_SHARE = 0.8;

/**
 * True where a row says a header of these schedules again, as on the next page of a list. What is merged over its rows
 * there need not be merged here.
 */
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
      return own > 1 && (same === own || (same >= own * REPEATED_SHARE && same * 2 >= texts.size));
    }),
  );
}
