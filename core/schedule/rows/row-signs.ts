import { cleanText } from "../cells/clean-text";
import { isFilled } from "../cells/is-filled";
import { LONGEST_VALUE } from "../cells/longest-text";
import type { SizeCell } from "../cells/read-size-cell";
import type { TableColumns } from "../columns/table-columns";
import type { Cell } from "../sheet";
import { mayListSizes } from "./lines-of-sizes";

const NUMBER_OF = /^\d+(?:\s*[x*+]\s*\d+)*\s*(?:nos?|nr|off|pcs|stk|mm|m)?\.?$/i;

/** What tells a bar row of one table from other rows, before it is read. */
export function rowSigns(columns: TableColumns, readSize: (cell: string | number, type: string) => SizeCell) {
  const lengthColumn = columns.length?.column ?? -1;
  return { isPlainBar, isBarForSure, readsSize, namesBar, fieldsFilled };

  /**
   * True where the row is a bar at first sight, so that no word of it has to be looked at. `member` is that of
   * the bar above.
   */
  function isPlainBar(cells: readonly Cell[], member: string | null | undefined): boolean {
    const size = columns.size < 0 ? null : cells[columns.size];
    if (mayListSizes(cells)) return false;
    if (typeof size === "string" ? readSize(size, "").is !== "size" : typeof size !== "number") return false;
    const total = columns.total < 0 ? null : cells[columns.total];
    const each = columns.each < 0 ? null : cells[columns.each];
    if (!(typeof total === "number" && total > 0) && !(typeof each === "number" && each > 0)) return false;
    const length = lengthColumn < 0 ? null : cells[lengthColumn];
    const shape = columns.shape < 0 ? null : cells[columns.shape];
    const isShape =
      typeof shape === "number" || (typeof shape === "string" && shape.length > 0 && shape.length < 5);
    // with size, count and shape a row is a bar whatever its words are
    if (isShape) return columns.mark < 0 || isFilled(cells, columns.mark);
    if (!(typeof length === "number" && length > 0)) return false;
    const mark = columns.mark < 0 ? 0 : cells[columns.mark];
    if (typeof mark === "string" ? !isMarkAtSight(mark) : typeof mark !== "number") return false;
    const named = columns.member < 0 ? null : cells[columns.member];
    return typeof named !== "string" || named === member;
  }

  /** A bar at first sight whose cells are each what their column asks: a size, a whole number, no size for a mark. */
  function isBarForSure(cells: readonly Cell[]): boolean {
    if (!isPlainBar(cells, undefined)) return false;
    const [mark, size, ...counts] = [columns.mark, columns.size, columns.total, columns.each].map((column) =>
      column < 0 ? null : (cells[column] ?? null),
    );
    if (typeof size !== "string" && typeof size !== "number") return false;
    if (readSize(size, "").is !== "size") return false;
    // "06" is a mark, "H16" before a bare number a size with how many of it
    const isNamed = typeof mark === "string" && /^\D/.test(mark);
    if (isNamed && typeof size === "number" && readSize(mark, "").is === "size") return false;
    return counts.every((count) => typeof count !== "number" || Number.isInteger(count));
  }

  /** True where the size cell is a size of the standard, a call-off or a ditto. */
  function readsSize(cells: readonly Cell[]): boolean {
    const cell = columns.size < 0 ? null : cells[columns.size];
    if (typeof cell !== "string" && typeof cell !== "number") return false;
    const { is, asks } = readSize(cell, "");
    return is === "size" || is === "ditto" || asks;
  }

  /** True where the size, a count or the length can be read at all. */
  function namesBar(cells: readonly Cell[]): boolean {
    if (readsSize(cells)) return true;
    const length = lengthColumn < 0 ? null : cells[lengthColumn];
    if (typeof length === "number" || (typeof length === "string" && isNumberOf(length))) return true;
    return [columns.members, columns.each, columns.total].some((column) => {
      const cell = column < 0 ? null : cells[column];
      return typeof cell === "number" || (typeof cell === "string" && isNumberOf(cleanText(cell)));
    });
  }

  /** How many of size, shape, count, length and dimensions the row holds. */
  function fieldsFilled(cells: readonly Cell[]): number {
    const hasCount =
      isFilled(cells, columns.members) || isFilled(cells, columns.each) || isFilled(cells, columns.total);
    let filled = hasCount ? 1 : 0;
    if (isFilled(cells, columns.size)) filled += 1;
    if (isFilled(cells, columns.shape)) filled += 1;
    if (isFilled(cells, lengthColumn)) filled += 1;
    if (columns.dims.some(({ field: { column } }) => isFilled(cells, column))) filled += 1;
    if (columns.bySize.some(({ column }) => isFilled(cells, column))) filled += 1;
    return filled;
  }
}

export type RowSigns = ReturnType<typeof rowSigns>;

/** "12", "B1", "12a" and the like; longer texts that begin as sums do are looked at. */
function isMarkAtSight(mark: string): boolean {
  if (mark.length === 0) return false;
  const first = mark.charCodeAt(0) | 32;
  const beginsAsSum = first === 116 || first === 115 || first === 103; // t, s, g
  if (beginsAsSum && mark.length > 4) return false;
  for (let index = 0; index < mark.length; index += 1) {
    const code = mark.charCodeAt(index);
    if (code >= 48 && code <= 57) return true;
  }
  return false;
}

function isNumberOf(text: string): boolean {
  return text.length <= LONGEST_VALUE && NUMBER_OF.test(text);
}
