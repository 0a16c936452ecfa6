import type { Cell } from "../sheet";
import type { HeaderSource } from "./header-source";
import { WIDEST } from "./known-words";
import { recogniseHeader } from "./recognise-header";

/** rows under a header cell that tell whether anything is listed below it; an edit in them has the sheet read anew */
const LOOKED_BELOW = 4;

interface Known {
  readonly column: number;
  readonly kind: string;
}

/** The rows of a possible header without what somebody typed beside it, which heads nothing. */
export function withoutStrays(
  source: HeaderSource,
  top: number,
  rows: number,
  isHeader: (cells: readonly Cell[]) => boolean,
): HeaderSource {
  const cleaned = new Map<number, readonly Cell[]>();
  const known: Known[] = [];
  for (let row = top; row < Math.min(top + rows, source.rowCount); row += 1) {
    const cells = source.cells(row);
    known.push(...knownIn(cells));
    cleaned.set(row, withoutNumbersBeside(withoutLoneWords(source, row, cells), known, isHeader));
  }
  return { ...source, cells: (row) => cleaned.get(row) ?? source.cells(row) };
}

/** A number heads a column only as a bar size in a run of them; outside the words it keeps no header from being one. */
function withoutNumbersBeside(
  cells: readonly Cell[],
  known: readonly Known[],
  isHeader: (cells: readonly Cell[]) => boolean,
): readonly Cell[] {
  if (known.length < 2 || isHeader(cells)) return cells;
  const first = Math.min(...known.map(({ column }) => column));
  const last = Math.max(...known.map(({ column }) => column));
  const isStray = (column: number): boolean => typeof cells[column] === "number";
  const without = (from: number, to: number): Cell[] =>
    cells.map((cell, column) => ((column < from || column > to) && isStray(column) ? null : cell));
  // first what stands behind a blank column: a run of sizes may follow the words at once
  const apart = without(...groupAround(cells, first, last));
  if (isHeader(apart)) return apart;
  const none = without(first, last);
  return isHeader(none) ? none : cells;
}

/** How far filled cells go on from those columns to both sides. */
function groupAround(cells: readonly Cell[], first: number, last: number): [number, number] {
  let [from, to] = [first, last];
  while (from > 0 && isFilled(cells[from - 1])) from -= 1;
  while (isFilled(cells[to + 1])) to += 1;
  return [from, to];
}

/** A word that stands alone with nothing below it is no second head of what another column heads. */
function withoutLoneWords(source: HeaderSource, row: number, cells: readonly Cell[]): readonly Cell[] {
  const known = knownIn(cells);
  const lone = known.filter(({ column, kind }) => {
    if (isFilled(cells[column - 1]) || isFilled(cells[column + 1])) return false;
    const isTwice = known.some((other) => other.column !== column && other.kind === kind);
    return isTwice && isBlankBelow(source, row, column);
  });
  if (lone.length === 0) return cells;
  return cells.map((cell, at) => (lone.some(({ column }) => column === at) ? null : cell));
}

function isBlankBelow(source: HeaderSource, row: number, column: number): boolean {
  for (let below = row + 1; below <= row + LOOKED_BELOW; below += 1)
    if (below < source.rowCount && isFilled(source.cells(below)[column])) return false;
  return true;
}

function knownIn(cells: readonly Cell[]): Known[] {
  return cells.slice(0, WIDEST).flatMap((cell, column) => {
    const kind = typeof cell === "string" ? recogniseHeader(cell)?.kind : undefined;
    return kind === undefined ? [] : [{ column, kind }];
  });
}

function isFilled(cell: Cell | undefined): boolean {
  return cell !== null && cell !== undefined && cell !== "";
}
