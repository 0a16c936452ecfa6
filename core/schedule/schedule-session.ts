import type { BarRow, ScheduleReading } from "./bar-row";
import { SAMPLE_ROWS } from "./columns/column-sample";
import type { SettledColumns } from "./columns/settle-columns";
import { sampledRows } from "./evidence/index";
import { MOST_ROWS as MOST_HEADER_ROWS } from "./header/find-header";
import { type Carried, isSameCarried } from "./rows/carried";
import { lengthStep } from "./rows/finish-reading";
import { BarRowReader } from "./rows/read-bar-row";
import type { ColumnDecision, Resumable } from "./rows/resumable";
import type { DraftRow } from "./rows/row-draft";
import { barsOfTitle } from "./rows/title-facts";
import type { Cell, Sheet } from "./sheet";

const NO_CELLS: readonly Cell[] = [];

/** A reading of a sheet that can be carried on after an edit of a few rows. */
export class ScheduleSession {
  constructor(
    readonly reading: ScheduleReading,
    /** null where a row can say something of another one that is not simply carried down */
    private readonly kept: Resumable | null,
    /** places of the bars that were read again, all others being as they were; null where all were read */
    readonly readAgain: readonly number[] | null = null,
  ) {}

  /**
   * The session of the sheet that changed in rows `firstRow` to `lastRow` only, those rows read anew; null
   * where the change may reach further, and the whole sheet has to be read: a row that was or becomes no
   * plain bar, that helped to decide the columns, or whose member, mark, revision, look or carried values
   * another row may go by.
   */
  reread(sheet: Sheet, firstRow: number, lastRow: number): ScheduleSession | null {
    const { kept, reading: before } = this;
    if (kept === null || !isSameRange(kept.sheet, sheet) || sheet.rowCells === undefined) return null;
    const first = indexOfRow(before.bars, firstRow);
    const last = first + lastRow - firstRow;
    if (before.bars[first]?.row !== firstRow || before.bars[last]?.row !== lastRow) return null;
    const settled = settledAgain(kept.decision, sheet, firstRow, lastRow);
    if (settled === null) return null;
    const bars = rereadBars(before, kept, sheet, first, last);
    if (bars === null) return null;
    const reading = { ...before, bars, lengthStep: lengthStep(bars), proofs: [settled.proof] };
    const places = Array.from({ length: last - first + 1 }, (_, at) => first + at);
    return new ScheduleSession(reading, { ...kept, sheet, decision: { ...kept.decision, settled } }, places);
  }
}

function rereadBars(
  before: ScheduleReading,
  { decision, standard, isConfirmed, carriedTo }: Resumable,
  sheet: Sheet,
  first: number,
  last: number,
): readonly BarRow[] | null {
  let isMarkAsked = false;
  const barOfMark = (): null => {
    isMarkAsked = true;
    return null;
  };
  const reader = new BarRowReader(sheet, standard, { isConfirmed, barOfMark }, decision.settled.layout);
  const isNamedBySheet = (before.guesses ?? []).some(({ guess }) => guess === "member-from-sheet");
  const title = barsOfTitle(before.titleFacts, before.tables);
  const bars = before.bars.slice();
  let above = before.bars[first - 1] ?? null;
  let carried = carriedTo[first] as Carried;
  // one row more: it may repeat what stands above it
  for (let index = first; index <= Math.min(last + 1, bars.length - 1); index += 1) {
    const old = bars[index] as BarRow;
    const cells = sheet.rowCells?.(old.row) ?? NO_CELLS;
    if (!isSameCarried(carried, carriedTo[index] as Carried)) return null;
    if (index <= last && !reader.signs.isPlainBar(cells, above?.member)) return null;
    const { bar, carried: after } = reader.read(cells, old.row, carried, above);
    above = bar;
    carried = after;
    if (isNamedBySheet) bar.member ??= old.member;
    if (old.member === title.member) bar.member ??= title.member;
    if (old.pour === title.pour) bar.pour ??= title.pour;
    if (index > last) {
      if (!readsAlike(bar, old)) return null;
    } else if (isOfItsOwn(bar, old)) bars[index] = withFinish(bar, old);
    else return null;
  }
  return isMarkAsked ? null : bars;
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
function withFinish(bar: DraftRow, old: BarRow): BarRow {
  bar.setMark = old.setMark ?? null;
  bar.superseded = old.superseded ?? false;
  bar.supersededBy = old.supersededBy ?? null;
  return bar;
}

function readsAlike(bar: BarRow, old: BarRow): boolean {
  return JSON.stringify(comparable(bar)) === JSON.stringify(comparable(old));
}

function comparable({
  table: _table,
  setMark: _set,
  superseded: _superseded,
  supersededBy: _by,
  ...said
}: BarRow) {
  return said;
}

/** The columns as the changed sheet has them decided; null where they are not as before. */
function settledAgain(
  { decide, settled, headerBottom }: ColumnDecision,
  sheet: Sheet,
  firstRow: number,
  lastRow: number,
): SettledColumns | null {
  const looked = sampledRows(headerBottom + 1, sheet.rowCount);
  const isLookedAt = looked.some((row) => row >= firstRow && row <= lastRow);
  if (!isLookedAt && firstRow > headerBottom + SAMPLE_ROWS) return settled;
  if (firstRow <= headerBottom + MOST_HEADER_ROWS) return null;
  const again = decide(sheet);
  return textOf(again) === textOf(settled) ? { ...settled, proof: again.proof } : null;
}

function textOf({ layout, held }: SettledColumns): string {
  return JSON.stringify([layout, held], (_, value: unknown) =>
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
