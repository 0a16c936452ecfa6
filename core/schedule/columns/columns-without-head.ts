import type { HeaderBlock } from "../header/header-blocks";
import type { Cell } from "../sheet";

/** values that make a column, and the share of the rows that reach over half of the table */
const LEAST_VALUES = 4;
const SHARE = 0.6;

/** Columns of a table over which nothing stands and that most of its rows fill: what they are nobody said. */
export function columnsWithoutHead(
  { left, right, columns, ignored, bySize, unknown, again = [] }: HeaderBlock,
  rows: readonly (readonly Cell[])[],
): number[] {
  const headed = new Set([
    ...ignored,
    ...[...columns, ...bySize, ...unknown, ...again].map(({ column }) => column),
  ]);
  for (const { inches } of columns) if (inches !== undefined) headed.add(inches);
  const bare: number[] = [];
  for (let column = left; column <= right; column += 1) if (!headed.has(column)) bare.push(column);
  if (bare.length === 0) return bare;
  const full = rows.filter(
    (cells) => columns.filter(({ column }) => isFilled(cells[column])).length * 2 > columns.length,
  );
  return bare.filter((column) => {
    const filled = full.filter((cells) => isFilled(cells[column])).length;
    return filled >= LEAST_VALUES && filled >= SHARE * full.length;
  });
}

function isFilled(cell: Cell | undefined): boolean {
  return cell !== null && cell !== undefined && cell !== "";
}
