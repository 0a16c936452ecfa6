import { type Cell, isCellError } from "../schedule/sheet";
import { resolveStandard } from "../standards";
import type { Standard } from "../standards/port";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import { errorCell, isBlankCell } from "./lift";
import type { Block, FunctionEnvironment } from "./worksheet-function";

const columnMissing = defineRefusal("column-missing", "value", "{name} is blank: give a column");
const columnTooWide = defineRefusal(
  "table-column-too-wide",
  "value",
  "{name} has {columns} columns: give one column",
);
const rowsUnequal = defineRefusal(
  "table-rows-unequal",
  "value",
  "{name} has {rows} rows and {other} has {otherRows}: give columns of as many rows, or one cell for all",
);
const standardNotOne = defineRefusal(
  "table-standard-not-one",
  "value",
  "standard holds {count} values: BAR.{function} goes by one standard, so give one",
);
const standardNoText = defineRefusal(
  "table-standard-no-text",
  "value",
  `standard is "{typed}": give an id such as BS8666:2005`,
);

/**
 * Why these columns are no table; null where they are. Each is one cell wide and as long as the others,
 * but for a single cell, which holds for every row.
 */
export function tableRefusal(columns: Readonly<Record<string, Block>>): Refusal | null {
  const entries = Object.entries(columns);
  for (const [name, block] of entries) {
    if (block.length === 0) return columnMissing({ name });
    const width = block[0]?.length ?? 0;
    if (width > 1) return columnTooWide({ name, columns: width });
  }
  const [first, ...others] = entries.filter(([, block]) => block.length > 1);
  for (const [other, block] of others) {
    if (block.length === first![1].length) continue;
    return rowsUnequal({ name: first![0], rows: first![1].length, other, otherRows: block.length });
  }
  return null;
}

/** The cell of a column in a row; a single cell stands for every row. */
export function cellInRow(block: Block | undefined, row: number): Cell {
  return block?.[block.length === 1 ? 0 : row]?.[0] ?? null;
}

/** The standard of a function that takes whole tables: one for the call, or the workbook's. */
export function standardOfTable(
  name: string,
  block: Block | undefined,
  { defaultStandard, own }: FunctionEnvironment,
): { readonly standard: Standard } | { readonly error: Block } {
  const cells = block?.flat().filter((cell) => !isBlankCell(cell)) ?? [];
  const [cell] = cells;
  if (cell !== undefined && cell !== null && isCellError(cell)) return { error: [[cell]] };
  const answer =
    cells.length > 1
      ? standardNotOne({ count: cells.length, function: name })
      : cell === undefined
        ? resolveStandard(defaultStandard, own)
        : typeof cell === "string"
          ? resolveStandard(cell, own)
          : standardNoText({ typed: String(cell).toUpperCase() });
  return isRefusal(answer) ? { error: [[errorCell(answer)]] } : { standard: answer };
}

/** The last row in which any of the columns holds something; -1 where none does. */
export function lastRow(columns: readonly Block[]): number {
  let last = -1;
  for (const block of columns) {
    let row = block.length - 1;
    while (row > last && isBlankCell(block[row]?.[0])) row -= 1;
    last = Math.max(last, row);
  }
  return last;
}

/** 1 where a column of numbers begins with its heading, as whole columns do; else 0. */
export function headerRows(numbers: Block): number {
  const first: Cell = numbers[0]?.[0] ?? null;
  const isHeading =
    typeof first === "string" && first.trim() !== "" && !/\d/.test(first) && numbers.length > 1;
  return isHeading ? 1 : 0;
}
