import type { Standard } from "../../standards/port";
import { sizeCellReader } from "../cells/read-size-cell";
import { massPerMetreOf, sizeElsewhere } from "../cells/size-elsewhere";
import type { HeaderBlock } from "../header/header-blocks";
import { unitInHeader } from "../header/recognise-header";
import type { Cell } from "../sheet";

const LEAST_ROWS = 5;
const SHARE = 0.8;

/** The block with the one column of unknown words, or of none, that holds bar sizes as its size, where no word names one. */
export function withSizeByLooks(
  block: HeaderBlock,
  bare: readonly number[],
  rows: readonly (readonly Cell[])[],
  standard: Standard,
): HeaderBlock {
  if (block.columns.some(({ kind }) => kind === "size")) return block;
  const open = [...block.unknown, ...bare.map((column) => ({ column, header: "" }))];
  const holding = open.filter(({ column }) => holdsSizes(rows, column, standard));
  const inMm = holding.length === 0 ? open.filter((one) => isOfSizesInMm(one, rows, standard)) : holding;
  const [one, another] = inMm;
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

/** "BIT (mm)": a short column in mm of nothing but diameters, several of them, needs no rows that are alike. */
function isOfSizesInMm(
  { column, header }: HeaderBlock["unknown"][number],
  rows: readonly (readonly Cell[])[],
  standard: Standard,
): boolean {
  if (unitInHeader(header) !== "mm") return false;
  const typed = typedIn(rows, column);
  const sizes = sizesOf(typed, standard);
  return sizes.length >= LEAST_ROWS && sizes.length === typed.length && new Set(sizes).size > 1;
}

function typedIn(rows: readonly (readonly Cell[])[], column: number): string[] {
  return rows.flatMap((cells) => {
    const cell = cells[column];
    return typeof cell === "number" || (typeof cell === "string" && cell.trim() !== "") ? [String(cell)] : [];
  });
}

/** kg/m of each that is a size: "16Ø12" and "62Ø12" are one size. */
function sizesOf(typed: readonly string[], standard: Standard): number[] {
  const read = sizeCellReader(standard, false);
  return typed
    .map((text) => massPerMetreOf(read(text, "").size ?? sizeElsewhere(text)))
    .filter((mass) => mass !== null);
}

function holdsSizes(rows: readonly (readonly Cell[])[], column: number, standard: Standard): boolean {
  const typed = typedIn(rows, column);
  const sizes = sizesOf(typed, standard);
  const different = new Set(sizes).size;
  return sizes.length >= LEAST_ROWS && sizes.length >= SHARE * typed.length && different * 2 <= sizes.length;
}
