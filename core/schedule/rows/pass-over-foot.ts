import type { BarRow, RowClass } from "../bar-row";
import type { Cell } from "../sheet";
import { filledColumns } from "./row-cells";
import type { RowReason, RowReasonCode } from "./row-reason";

const OF_FOOT: ReadonlySet<RowReasonCode> = new Set([
  ...(["mark-alone", "size-alone", "size-unread", "no-field-read", "no-name"] as const),
]);

/**
 * The last rows read as bars, of which not one figure could be read, are the foot of the sheet where they stand apart:
 * signatures, a table of revisions, notes with their numbers. True where there are such rows.
 */
export function takeFootFromBars(
  bars: BarRow[],
  classes: RowClass[],
  reasons: RowReason[],
  cells: (row: number) => readonly Cell[],
): boolean {
  let from = bars.length;
  while (from > 0 && isOfFoot(bars[from - 1] as BarRow, cells)) from -= 1;
  const last = bars[from - 1]?.row ?? -1;
  const isApart = (row: number): boolean => isEnd(classes, reasons, row);
  const foot = bars.slice(from).filter(({ row }) => between(last, row).some(isApart));
  // what stands right below the list may be a bar that nobody filled in
  if (from === 0 || foot.length < bars.length - from || foot.length === 0) return false;
  bars.length = from;
  for (const { row } of foot) {
    classes[row] = "note";
    reasons[row] = { code: "behind-the-list" };
  }
  return true;
}

/** A blank row, a sum, or words that head a foot. */
function isEnd(classes: readonly RowClass[], reasons: readonly RowReason[], row: number): boolean {
  return classes[row] === "blank" || classes[row] === "total" || reasons[row]?.code === "title-or-foot";
}

const between = (after: number, before: number): number[] =>
  Array.from({ length: Math.max(0, before - after - 1) }, (_, at) => after + 1 + at);

/** No figure of a bar, or a sentence and its number alone: "1 | Read with drawing S-201." */
function isOfFoot(bar: BarRow, cells: (row: number) => readonly Cell[]): boolean {
  const row = cells(bar.row);
  const [number, text, another] = filledColumns(row).map((column) => row[column]);
  const isNumber = typeof number === "number" || /^\d{1,2}\.?$/.test(String(number));
  const isSentence = typeof text === "string" && text.length <= LONGEST && SENTENCE.test(text);
  return isWithoutFigures(bar) || (isNumber && isSentence && another === undefined && bar.size === null);
}

const LONGEST = 400;
/** four words, or the signs of as many where no blank parts them */
const SENTENCE = /(?:\p{L}{2,}\P{L}+){3}\p{L}|[\p{Script=Han}\p{Script=Hiragana}\p{Script=Thai}]{8}/u;

function isWithoutFigures(bar: BarRow): boolean {
  const { size, members, each, total, length, mass, unitMass, pieceMass, totalLength, dims, sizedAt } = bar;
  const figures = [size, members, each, total, length, mass, unitMass, pieceMass, totalLength, sizedAt];
  return figures.every((one) => one == null) && dims.every((one) => one === null) && bar.legs == null;
}

/** What stands apart below the last bar, and of which nothing of a bar can be read, is the foot of the sheet: a note. */
export function passOverFoot(classes: RowClass[], reasons: RowReason[], lastBar: number | undefined): void {
  if (lastBar === undefined) return;
  let isApart = false;
  for (let row = lastBar + 1; row < classes.length; row += 1) {
    isApart ||= isEnd(classes, reasons, row);
    if (!isApart) continue;
    if (classes[row] !== "unread" || !OF_FOOT.has((reasons[row] as RowReason).code)) continue;
    classes[row] = "note";
    reasons[row] = { code: "behind-the-list" };
  }
}
