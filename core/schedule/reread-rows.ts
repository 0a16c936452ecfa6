import type { Standard } from "../standards/port";
import type { BarRow, ScheduleReading } from "./bar-row";
import { type Carried, isSameCarried } from "./cells/read-count-cells";
import { SAMPLE_ROWS, type TableLayout } from "./columns/decide-columns";
import { MOST_ROWS as MOST_HEADER_ROWS } from "./header/find-header";
import { lengthStep } from "./rows/finish-reading";
import { barRowReader } from "./rows/read-bar-row";
import type { Cell, Sheet } from "./sheet";

/** What the columns of a table were taken for, and how to decide it again. */
export interface ColumnDecision {
  readonly layout: TableLayout;
  readonly headerBottom: number;
  decide(changed: Sheet): TableLayout;
}

/** What a reading leaves behind so that a few of its rows can be read again. */
export interface Resumable {
  readonly sheet: Sheet;
  readonly standard: Standard;
  readonly decision: ColumnDecision;
  /** what was carried down to each bar before it was read */
  readonly carriedTo: readonly Carried[];
  isConfirmed(code: string, row: number, column: number): boolean;
}

type Open<T> = { -readonly [K in keyof T]: T[K] };

const resumables = new WeakMap<ScheduleReading, Resumable>();
const NO_CELLS: readonly Cell[] = [];

/** Only for a sheet of one table whose rows say nothing of each other beyond what is carried down. */
export function keepForRereading(reading: ScheduleReading, resumable: Resumable): void {
  resumables.set(reading, resumable);
}

/**
 * The reading of a sheet that changed in rows `firstRow` to `lastRow` only, those rows read anew; null
 * where the change may reach further, and the whole sheet has to be read: a row that was or becomes no
 * plain bar, that helped to decide the columns, or whose member, mark, revision, look or carried values
 * another row may go by.
 */
export function rereadRows(
  before: ScheduleReading,
  sheet: Sheet,
  firstRow: number,
  lastRow: number,
): ScheduleReading | null {
  const kept = resumables.get(before);
  if (kept === undefined || !isSameRange(kept.sheet, sheet) || sheet.rowCells === undefined) return null;
  const first = indexOfRow(before.bars, firstRow);
  const last = first + lastRow - firstRow;
  if (before.bars[first]?.row !== firstRow || before.bars[last]?.row !== lastRow) return null;
  const { decision, standard, isConfirmed, carriedTo } = kept;
  if (!isDecidedAlike(decision, sheet, firstRow)) return null;
  let isMarkAsked = false;
  const barOfMark = (): null => {
    isMarkAsked = true;
    return null;
  };
  const reader = barRowReader(sheet, standard, { isConfirmed, barOfMark }, decision.layout);
  reader.resumeAfter(before.bars[first - 1] ?? null);
  const carried = { ...(carriedTo[first] as Carried) };
  const isNamedBySheet = (before.guesses ?? []).some(({ guess }) => guess === "member-from-sheet");
  const bars = before.bars.slice();
  // one row more: it may repeat what stands above it
  for (let index = first; index <= Math.min(last + 1, bars.length - 1); index += 1) {
    const old = bars[index] as BarRow;
    const cells = sheet.rowCells(old.row) ?? NO_CELLS;
    if (!isSameCarried(carried, carriedTo[index] as Carried)) return null;
    if (index <= last && !reader.isPlainBar(cells)) return null;
    const bar: Open<BarRow> = reader.read(cells, old.row, carried);
    if (isNamedBySheet) bar.member ??= old.member;
    if (index > last) {
      if (!readsAlike(bar, old)) return null;
    } else if (isOfItsOwn(bar, old)) bars[index] = withFinish(bar, old);
    else return null;
  }
  if (isMarkAsked) return null;
  const reading = { ...before, bars, lengthStep: lengthStep(bars) };
  resumables.set(reading, { ...kept, sheet });
  return reading;
}

/** Nothing that other rows or the sheet go by differs from the bar that stood here. */
function isOfItsOwn(bar: BarRow, old: BarRow): boolean {
  return (
    bar.member === old.member &&
    bar.mark === old.mark &&
    bar.revision === old.revision &&
    bar.remark === old.remark &&
    bar.hidden === old.hidden &&
    bar.struckThrough === old.struckThrough &&
    bar.fill === old.fill
  );
}

/** What only the whole sheet could say of the row stays as it was. */
function withFinish(bar: Open<BarRow>, old: BarRow): BarRow {
  bar.setMark = old.setMark ?? null;
  bar.superseded = old.superseded ?? false;
  return bar;
}

function readsAlike(bar: BarRow, old: BarRow): boolean {
  return JSON.stringify(comparable(bar)) === JSON.stringify(comparable(old));
}

function comparable({ table: _table, setMark: _set, superseded: _superseded, ...said }: BarRow) {
  return said;
}

/** The columns as the changed sheet would have them decided are the same. */
function isDecidedAlike(
  { decide, layout, headerBottom }: ColumnDecision,
  sheet: Sheet,
  firstRow: number,
): boolean {
  if (firstRow > headerBottom + SAMPLE_ROWS) return true;
  return firstRow > headerBottom + MOST_HEADER_ROWS && textOf(decide(sheet)) === textOf(layout);
}

function textOf(layout: TableLayout): string {
  return JSON.stringify(layout, (_, value: unknown) =>
    value instanceof Map || value instanceof Set ? [...value] : value,
  );
}

function isSameRange(a: Sheet, b: Sheet): boolean {
  return (
    a.name === b.name &&
    a.top === b.top &&
    a.left === b.left &&
    a.rowCount === b.rowCount &&
    a.columnCount === b.columnCount &&
    (b.merges ?? []).length === 0
  );
}

/** Bars stand in order of their rows. */
function indexOfRow(bars: readonly BarRow[], row: number): number {
  let low = 0;
  let high = bars.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((bars[middle] as BarRow).row < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
