import type { Standard } from "../standards/port";
import type { ScheduleReading, SheetGuess } from "./bar-row";
import { marksOf } from "./header/lists-details";
import { assertSheet, parseReadOptions, type ReadOptions } from "./read-options";
import { countSettled, type ListBefore } from "./rows/list-before";
import { SheetReader } from "./rows/sheet-reader";
import { sumsBeside, withoutBeside } from "./rows/sums-beside";
import { ScheduleSession } from "./schedule-session";
import type { Sheet } from "./sheet";
import { sheetAccess } from "./sheet-access";
import { asJoined, splitJoined } from "./split-joined";
import { inOneColumn, splitPasted } from "./split-pasted";

/**
 * Everything that can be read of a sheet: its schedules, each row's class and reason, every bar row
 * with what could not be read or was guessed. Lengths mm, masses kg. Bad cells are problems of their
 * row; `options` come out of the workbook and are ignored, and said so, where they are malformed.
 *
 * @example readSchedule(sheetFromRows("B1", rows), standard).bars[0]?.size?.diameter // 16
 */
export function readSchedule(sheet: Sheet, standard: Standard, options?: ReadOptions): ScheduleReading {
  return openSchedule(sheet, standard, options, true).reading;
}

/** The reading of a sheet with what it takes to read a few of its rows again after an edit, unless `isOnce`. */
export function openSchedule(
  sheet: Sheet,
  standard: Standard,
  options?: ReadOptions,
  isOnce = false,
): ScheduleSession {
  assertSheet(sheet);
  const { options: read, wrong } = parseReadOptions(options);
  const beside = sumsBeside(sheet.rowCount, sheetAccess(sheet, read).cells, standard);
  const open = { standard, read, wrong, isOnce };
  if (beside.length === 0) return openList(sheet, open);
  const { reading } = openList(withoutBeside(sheet, beside), { ...open, isOnce: true });
  const summaries = [...(reading.summaries ?? []), ...beside.map(({ block }) => block)];
  return new ScheduleSession({ ...reading, summaries }, null);
}

interface HowToOpen {
  readonly standard: Standard;
  readonly read: ReadOptions;
  /** why the stored options could not be taken */
  readonly wrong: string | null;
  readonly isOnce: boolean;
}

function openList(sheet: Sheet, { standard, read, wrong, isOnce }: HowToOpen): ScheduleSession {
  const { cells } = sheetAccess(sheet, read);
  const joined = splitJoined(sheet, cells, standard);
  const pasted = joined === null ? splitPasted(sheet, cells) : null;
  const before = remember(() => listBefore(sheet, standard));
  const marks = remember(() => marksBefore(sheet, standard));
  const reader = new SheetReader(joined?.sheet ?? pasted ?? sheet, standard, read, isOnce, before, marks);
  const own = reader.read();
  const reading = wrong === null ? own : { ...own, guesses: [malformed(wrong), ...(own.guesses ?? [])] };
  if (joined !== null) return new ScheduleSession(asJoined(reading, joined), null);
  return pasted === null
    ? new ScheduleSession(reading, reader.resumable())
    : new ScheduleSession(inOneColumn(reading), null);
}

function remember<T>(make: () => T): () => T {
  let made: { readonly it: T } | null = null;
  return () => {
    made ??= { it: make() };
    return made.it;
  };
}

/** The last table of the sheet before, and its last bar: where a sheet has no header its list may go on. */
function listBefore({ follows, left }: Sheet, standard: Standard): ListBefore | null {
  if (follows === undefined) return null;
  const { tables, bars, pasted } = readSchedule(follows, standard);
  const [table, last] = [tables[tables.length - 1], bars[bars.length - 1]];
  if (table === undefined || last === undefined) return null;
  const isMoved = pasted === true || follows.left !== left;
  const count = countSettled(table, bars);
  return { sheet: follows.name, table: isMoved ? null : table, last, count };
}

const MOST_SHEETS_BACK = 8;

/** Marks of the bars on the sheets before, as details name them. */
function marksBefore({ follows }: Sheet, standard: Standard): readonly string[] {
  const marks: string[] = [];
  let sheet = follows;
  for (let back = 0; sheet !== undefined && back < MOST_SHEETS_BACK; back += 1) {
    for (const mark of marksOf(readSchedule(sheet, standard).bars)) marks.push(mark);
    sheet = sheet.follows;
  }
  return marks;
}

function malformed(reason: string): SheetGuess {
  return { guess: "stored-corrections", reason, asks: false, row: null, column: null };
}
