import type { ColumnKind } from "../bar-row";
import type { TableLayout } from "../columns/decide-columns";
import { numbersColumns } from "../header/numbers-columns";
import type { Cell } from "../sheet";

const OF_NUMBERS: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  ...(["members", "each", "total", "spacing", "length", "totalLength", "mass", "unitMass"] as const),
]);
const FEWEST = 2;
const FIGURE = /^\W*\d/;

/**
 * A row right under a header that numbers its columns, or says more of them: words alone, under columns of numbers alone
 * ("c/c" under the spacing, "run/spacing +1" under the number of bars).
 */
export function explainsColumns(
  cells: readonly Cell[],
  filled: readonly number[],
  layouts: readonly TableLayout[],
): boolean {
  if (numbersColumns(cells, filled)) return true;
  const columns = new Set(
    layouts.flatMap(({ table }) =>
      [...table.columns].flatMap(([kind, { column }]) => (OF_NUMBERS.has(kind) ? [column] : [])),
    ),
  );
  const areWords = filled.every((column) => {
    const cell = cells[column];
    return typeof cell === "string" && /\p{L}/u.test(cell) && !FIGURE.test(cell);
  });
  return filled.length >= FEWEST && areWords && filled.every((column) => columns.has(column));
}
