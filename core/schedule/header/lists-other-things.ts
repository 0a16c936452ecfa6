import type { ColumnKind } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import type { Header } from "./find-header";
import type { HeaderBlock } from "./header-blocks";
import type { HeaderSource } from "./header-source";

const SAMPLE_OF_SIZES = 40;
/** 926x2040, 203x203x46 UC, 150 x 75: width by height, where a bar has one diameter */
const SIZE_OF_OTHER_THINGS = /\d{2,}\s*x\s*\d{2,}\s*x|\d{3,}\s*x\s*\d{2,}|^\D+$/i;
/** A table with none of these, without sizes and with a column that is not known lists other things. */
const TELLS_OF_BARS: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  "shape",
  "A",
  "members",
  "each",
  "former",
  "grade",
]);

/** A table with none of these says how bars are bent, and of none how many there are or how much of it. */
const AMOUNTS: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  ...(["size", "members", "each", "total", "length", "totalLength", "mass", "pieceMass"] as const),
  ...(["unitMass", "spacing"] as const),
]);

/** True where nothing of an amount is headed, or the cells under "Size" are of doors, sections and the like, and none could be a bar's. */
export function listsOtherThings(
  source: HeaderSource,
  header: Header,
  { columns, bySize, unknown }: HeaderBlock,
): boolean {
  if (bySize.length === 0 && !columns.some(({ kind }) => AMOUNTS.has(kind))) return true;
  const column = columns.find(({ kind }) => kind === "size")?.column;
  if (column === undefined) {
    const tells = bySize.length > 0 || columns.some(({ kind }) => TELLS_OF_BARS.has(kind));
    return !tells && unknown.length > 0;
  }
  let other = 0;
  const last = Math.min(source.rowCount, header.bottom + 1 + SAMPLE_OF_SIZES);
  for (let row = header.bottom + 1; row < last; row += 1) {
    const cell = source.cells(row)[column];
    if (cell === null || cell === undefined || cell === "") continue;
    if (
      typeof cell !== "string" ||
      cell.length > LONGEST_VALUE ||
      !SIZE_OF_OTHER_THINGS.test(cleanText(cell))
    )
      return false;
    other += 1;
  }
  return other > 1;
}
