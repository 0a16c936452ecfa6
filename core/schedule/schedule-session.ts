import type { BarRow, ScheduleReading } from "./bar-row";
import { SAMPLE_ROWS } from "./columns/column-sample";
import type { SettledColumns } from "./columns/settle-columns";
import { sampledRows } from "./evidence/index";
import { MOST_ROWS as MOST_HEADER_ROWS } from "./header/find-header";
import { SAMPLED_TYPES } from "./header/kind-by-content";
import { lengthStep } from "./rows/finish-reading";
import { rereadBars } from "./rows/reread-bars";
import type { ColumnDecision, Resumable } from "./rows/resumable";
import type { RowReason } from "./rows/row-reason";
import { PLAIN_BAR } from "./rows/row-verdict";
import type { Sheet } from "./sheet";

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
    const again = rereadBars(before, kept, sheet, first, last);
    if (again === null) return null;
    const { bars, changed, carriedTo } = again;
    const rowReasons = asPlainBars(before.rowReasons, firstRow, lastRow);
    const reading = { ...before, bars, rowReasons, lengthStep: lengthStep(bars), proofs: [settled.proof] };
    const decision = { ...kept.decision, settled };
    return new ScheduleSession(reading, { ...kept, sheet, decision, carriedTo }, changed);
  }
}

/** What is read again is a bar at first sight, for whatever reason it was one before. */
function asPlainBars(
  reasons: ScheduleReading["rowReasons"],
  firstRow: number,
  lastRow: number,
): ScheduleReading["rowReasons"] {
  const { code } = PLAIN_BAR.because;
  const isPlain = (reason: RowReason): boolean => reason.code === code;
  if (reasons.slice(firstRow, lastRow + 1).every(isPlain)) return reasons;
  return reasons.map((reason, row) => (row < firstRow || row > lastRow ? reason : PLAIN_BAR.because));
}

/** The columns as the changed sheet has them decided; null where they are not as before. */
function settledAgain(
  { decide, settled, headerBottom, isSameHeader }: ColumnDecision,
  sheet: Sheet,
  firstRow: number,
  lastRow: number,
): SettledColumns | null {
  const looked = sampledRows(headerBottom + 1, sheet.rowCount);
  const isLookedAt = looked.some((row) => row >= firstRow && row <= lastRow);
  if (!isLookedAt && firstRow > headerBottom + SAMPLE_ROWS) return settled;
  // the row right under the heads may number the columns, head sums or be a part of the heads
  if (firstRow <= headerBottom + 1) return null;
  if (firstRow <= headerBottom + MOST_HEADER_ROWS && !holdsNumber(sheet, headerBottom + 1)) return null;
  if (firstRow <= headerBottom + SAMPLED_TYPES && !isSameHeader(sheet)) return null;
  const again = decide(sheet);
  return textOf(again) === textOf(settled) ? { ...settled, proof: again.proof } : null;
}

function holdsNumber(sheet: Sheet, row: number): boolean {
  return sheet.rowCells?.(row).some((cell) => typeof cell === "number") === true;
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
