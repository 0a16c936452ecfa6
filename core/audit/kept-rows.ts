import type { AnswersOfBars } from "../bar/answers-of-bars";
import type { BarFacts } from "../bar/bar-facts";
import { type CodesMeant, codesMeant } from "../bar/codes-meant";
import type { BarRow, ScheduleReading } from "../schedule/bar-row";
import { isSameBar } from "../schedule/rows/same-bar";
import type { ScheduleSession } from "../schedule/schedule-session";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import type { SheetState } from "./audit-state";

/** An edit of rows of a sheet that was audited. */
export interface Change {
  readonly before: SheetState;
  readonly firstRow: number;
  readonly lastRow: number;
}

/** Where the bars that an edit left alone stood before it. */
export interface KeptRows {
  readonly before: SheetState;
  /** as the changed sheet has them */
  readonly codesMeant: CodesMeant | null;
  /** the old place of a bar; -1 for one that changed */
  place(index: number): number;
  /** the changed bars, all others standing where they stood; null where bars may have moved */
  readonly inPlace: { readonly answers: AnswersOfBars; readonly changed: readonly number[] } | null;
}

/** The bars outside the change that read as before; null where all are read anew. */
export function keptRows(
  sheet: Sheet,
  session: ScheduleSession,
  standard: Standard,
  change: Change,
): KeptRows | null {
  const { before, firstRow, lastRow } = change;
  const { reading, readAgain } = session;
  const old = before.facts;
  const { bars } = old;
  const meantBefore = old.codesMeant(standard);
  const isNoShapeChanged =
    readAgain?.every((place) => hasSameShape(reading.bars[place], bars[place]?.row)) === true;
  const codes = meantBefore === null && isNoShapeChanged ? null : codesMeant(reading.bars, standard);
  // what every code means hangs on it
  if (codes?.id !== meantBefore?.id) return null;
  if (bars.length === 0 || sheet.top !== old.sheet.top || sheet.left !== old.sheet.left) return null;
  if (readAgain !== null) {
    const changed = new Set(readAgain);
    return {
      before,
      codesMeant: codes,
      place: (index) => (changed.has(index) ? -1 : index),
      inPlace: { answers: old.answers, changed: readAgain },
    };
  }
  if (!areTablesAlike(reading, old.reading)) return null;
  let at = 0;
  const places = reading.bars.map((bar) => {
    while (at < bars.length && (bars[at] as BarFacts).row.row < bar.row) at += 1;
    const facts = bars[at];
    const isOutside = bar.row < firstRow || bar.row > lastRow;
    return facts !== undefined && isOutside && isSameBar(facts.row, bar) ? at : -1;
  });
  const changed = places.flatMap((place, index) => (place < 0 ? [index] : []));
  const isInPlace =
    bars.length === places.length &&
    reading.bars.every(({ row }, index) => row === bars[index]?.row.row) &&
    textOf(reading.tables) === textOf(old.reading.tables);
  const inPlace = isInPlace ? { answers: old.answers, changed } : null;
  return { before, codesMeant: codes, place: (index) => places[index] as number, inPlace };
}

function textOf(tables: ScheduleReading["tables"]): string {
  return JSON.stringify(tables, (_, value: unknown) =>
    value instanceof Map || value instanceof Set ? [...value] : value,
  );
}

/** The same code with the same dimensions. */
function hasSameShape(one: BarRow | undefined, other: BarRow | undefined): boolean {
  if (one === undefined || other === undefined || one.shape !== other.shape) return false;
  const { dims } = other;
  return one.dims.every((dim, place) => dim === dims[place]);
}

function areTablesAlike({ tables }: ScheduleReading, old: ScheduleReading): boolean {
  return (
    tables.length === old.tables.length &&
    tables.every((table, index) => sameColumns(table, old.tables[index]))
  );
}

function sameColumns(
  a: ScheduleReading["tables"][number],
  b: ScheduleReading["tables"][number] | undefined,
): boolean {
  if (b === undefined || a.headerTop !== b.headerTop || a.columns.size !== b.columns.size) return false;
  for (const [kind, column] of a.columns) {
    const other = b.columns.get(kind);
    if (other === undefined || other.column !== column.column || other.unit !== column.unit) return false;
  }
  return true;
}
