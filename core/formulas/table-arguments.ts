import type { Cell } from "../schedule/sheet";
import { defineRefusal, type Refusal } from "../units/refusal";
import { isBlankCell } from "./lift";
import type { Block } from "./worksheet-function";

const columnMissing = defineRefusal("column-missing", "value", "{name} is blank: give a column");
const columnTooWide = defineRefusal(
  "table-column-too-wide",
  "value",
  "{name} has {columns} columns: give one column",
);
const rowsUnequal = defineRefusal(
  "table-rows-unequal",
  "value",
  "{name} has {rows} rows and {other} has {otherRows}: give columns of as many rows",
);

/** Why these columns are no table; null where they are. Each is one cell wide and as long as the others. */
export function tableRefusal(columns: Readonly<Record<string, Block>>): Refusal | null {
  const entries = Object.entries(columns);
  for (const [name, block] of entries) {
    if (block.length === 0) return columnMissing({ name });
    const width = block[0]?.length ?? 0;
    if (width > 1) return columnTooWide({ name, columns: width });
  }
  const [first, ...others] = entries;
  for (const [other, block] of others) {
    if (block.length === first![1].length) continue;
    return rowsUnequal({ name: first![0], rows: first![1].length, other, otherRows: block.length });
  }
  return null;
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
