import type { Standard } from "../../standards/port";
import { sizeCellReader } from "../cells/read-size-cell";
import { massPerMetreOf } from "../cells/size-elsewhere";
import type { HeaderBlock } from "../header/header-blocks";
import type { Cell } from "../sheet";

const LEAST_ROWS = 5;
const SHARE = 0.8;

/** The block with the one column of unknown words that holds bar sizes as its size, where no word names one. */
export function withSizeByLooks(
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  standard: Standard,
): HeaderBlock {
  if (block.columns.some(({ kind }) => kind === "size")) return block;
  const holding = block.unknown.filter(({ column }) => holdsSizes(rows, column, standard));
  const [one, another] = holding;
  if (one === undefined || another !== undefined) return block;
  const size = {
    kind: "size" as const,
    column: one.column,
    header: one.header,
    unit: null,
    corrected: false,
    by: "arithmetic" as const,
  };
  return {
    ...block,
    columns: [...block.columns, size].sort((a, b) => a.column - b.column),
    unknown: block.unknown.filter((column) => column !== one),
  };
}

function holdsSizes(rows: readonly (readonly Cell[])[], column: number, standard: Standard): boolean {
  const read = sizeCellReader(standard, false);
  const typed = rows.flatMap((cells) => {
    const cell = cells[column];
    return typeof cell === "number" || (typeof cell === "string" && cell.trim() !== "") ? [String(cell)] : [];
  });
  // "16Ø12" and "62Ø12" are one size
  const sizes = typed.map((text) => massPerMetreOf(read(text, "").size)).filter((mass) => mass !== null);
  const different = new Set(sizes).size;
  return sizes.length >= LEAST_ROWS && sizes.length >= SHARE * typed.length && different * 2 <= sizes.length;
}
