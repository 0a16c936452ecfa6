import { ICommandService, type IRange } from "@univerjs/core";
import { ScrollToCellCommand } from "@univerjs/preset-sheets-core";
import type { Grid } from "./create-grid";

type OpenSheet = ReturnType<NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>["getActiveSheet"]>;

/** Rows and columns left in sight before a cell that is gone to, where there is room for them. */
const ROWS_ABOVE = 4;
const COLUMNS_BEFORE = 6;

/**
 * The grid's own way to what the name box or its search finds may leave a row behind the frozen head, so its
 * end is looked at once it is drawn.
 */
export function watchGoingTo(grid: Grid): void {
  const commands = grid.univer.__getInjector().get(ICommandService);
  commands.onCommandExecuted(({ id, params }) => {
    const range = (params as { range?: IRange } | undefined)?.range;
    if (id !== ScrollToCellCommand.id || range === undefined) return;
    const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
    const look = (): void => sheet && bringIntoView(sheet, range.startRow, range.startColumn);
    requestAnimationFrame(() => requestAnimationFrame(look));
  });
}

/** Scrolls no further than it must, so that the row's first columns stay in sight where they can. */
export function bringIntoView(sheet: OpenSheet, row: number, column: number): void {
  // a sheet that was only now turned to has none yet
  const seen = sheet.getVisibleRange() ?? null;
  const { xSplit, ySplit } = sheet.getFreeze();
  const ofRows: Lines = { frozen: ySplit, most: ROWS_ABOVE, size: (at) => sheet.getRowHeight(at) };
  const ofColumns: Lines = { frozen: xSplit, most: COLUMNS_BEFORE, size: (at) => sheet.getColumnWidth(at) };
  const top = firstInView(ofRows, row, seen && { first: seen.startRow, last: seen.endRow });
  const left = firstInView(ofColumns, column, seen && { first: seen.startColumn, last: seen.endColumn });
  if (seen !== null && top === seen.startRow && left === seen.startColumn) return;
  sheet.scrollToCell(scrolledTo(ofRows, top), scrolledTo(ofColumns, left));
}

/**
 * What the grid is to be told, that a line comes first: it scrolls as if the frozen lines were as large as those
 * that go out of sight in their place, and so would go too far under a tall head.
 */
function scrolledTo({ frozen, size }: Lines, line: number): number {
  let head = 0;
  for (let at = 0; at < frozen; at += 1) head += size(at);
  let told = line;
  let before = 0;
  for (let at = line - frozen; at < line; at += 1) before += size(at);
  while (told > frozen && before < head) {
    told -= 1;
    before += size(told - frozen);
  }
  return told;
}

interface Lines {
  /** lines before this one never scroll */
  readonly frozen: number;
  /** lines left in sight before the one that is gone to */
  readonly most: number;
  /** px */
  size(at: number): number;
}

/** The line to begin the view with, that another is seen whole; the present one where it is so already. */
function firstInView(
  { frozen, most, size }: Lines,
  line: number,
  seen: { readonly first: number; readonly last: number } | null,
): number {
  if (seen === null) return Math.max(0, line - most);
  // the first and the last may be in sight by a part
  if (line < frozen || (line > seen.first && line < seen.last - 1)) return seen.first;
  let room = -size(line);
  for (let at = seen.first; at < seen.last; at += 1) room += size(at);
  let first = line;
  while (first > frozen && line - first < most && size(first - 1) <= room) {
    first -= 1;
    room -= size(first);
  }
  return first;
}
