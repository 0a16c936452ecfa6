import {
  MessageChannel,
  type MessagePort,
  receiveMessageOnPort,
  Worker,
  workerData,
} from "node:worker_threads";
import {
  type HabitsApart,
  type RowsApart,
  type RowsBegun,
  type RowsHelped,
  type RowsHelper,
  rowsOfApart,
} from "../../core/audit";
import type { Finding } from "../../core/audit/finding";
import type { Sheet } from "../../core/schedule";
import { type PackedSheet, type SheetReading, sheetOfPacked } from "../xlsx/read/read-sheet";

/** Rows from which a second thread is worth its start and the tenth of memory that it takes. */
const LEAST = 400_000;
/** Rows that a thread takes at once. */
const RUN = 2048;
/** ms without a run of rows done, after which the other thread is given up. */
const PATIENCE = 20_000;

/** MB of what a thread has made and may forget: a third of it costs twice the time for tidying. */
const YOUNG = 36;

/** Places of what both threads look at. */
enum Shared {
  /** how many runs of rows were begun with */
  Begun = 0,
  /** runs of rows that the second thread has done */
  Runs = 1,
  End = 2,
  /** whether the sheet's habits are told */
  Habits = 3,
}

enum End {
  Open = 0,
  Told = 1,
  Failed = 2,
}

enum Habits {
  Unknown = 0,
  Told = 1,
  Left = 2,
}

interface RowsStart {
  readonly kind: "rows";
  readonly rows: RowsApart;
  readonly sheet: PackedSheet;
  readonly shared: Int32Array;
  readonly port: MessagePort;
}

/** Found of some rows: the places of those with findings, and the findings of each. */
interface Told {
  readonly places: readonly number[];
  readonly found: readonly (readonly Finding[])[];
}

/**
 * A second thread that works out what is known of the bars of a long sheet while this one asks for their habits, and
 * judges rows while this one asks of the sheet as a whole and then takes its part.
 */
export function rowsHelper(
  onRowsRead: () => void = () => undefined,
  script = new URL(import.meta.url),
  least = LEAST,
): RowsHelper {
  return {
    begin: (rows, sheet) => {
      onRowsRead();
      if (rows.bars.places.length < least) return null;
      // a sheet of a job is spread over what was read
      const packed = (sheet as Partial<SheetReading>).packed?.() ?? null;
      return packed === null ? null : begin(rows, packed, script);
    },
  };
}

function begin(rows: RowsApart, sheet: PackedSheet, script: URL): RowsBegun {
  const shared = new Int32Array(new SharedArrayBuffer(4 * Int32Array.BYTES_PER_ELEMENT));
  const { port1, port2 } = new MessageChannel();
  const start: RowsStart = { kind: "rows", rows, sheet, shared, port: port2 };
  const worker = new Worker(script, {
    workerData: start,
    transferList: [port2],
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG },
  });
  // one that cannot be had is no fault of the check
  worker.on("error", () => undefined);
  worker.unref();
  const { length } = rows.bars.places;
  const tell = (habits: Habits): void => {
    Atomics.store(shared, Shared.Habits, habits);
    Atomics.notify(shared, Shared.Habits);
  };
  const end = (): void => {
    port1.close();
    void worker.terminate();
  };
  const helped: RowsHelped = {
    finish: (judge, take) => {
      const own = new Set<number>();
      for (let from = nextRun(shared, length); from >= 0; from = nextRun(shared, length)) {
        own.add(from);
        for (let place = from; place < Math.min(from + RUN, length); place += 1) judge(place);
      }
      const told = own.size * RUN >= length ? null : waitedFor(shared, port1);
      for (let at = 0; told !== null && at < told.places.length; at += 1)
        take(told.places[at] as number, told.found[at] as readonly Finding[]);
      for (let from = 0; told === null && from < length; from += RUN)
        if (!own.has(from))
          for (let place = from; place < Math.min(from + RUN, length); place += 1) judge(place);
      end();
    },
  };
  return {
    judge: (habits) => {
      port1.postMessage(habits);
      tell(Habits.Told);
      return helped;
    },
    leave: () => {
      tell(Habits.Left);
      end();
    },
  };
}

/**
 * The first row of the next run, below 0 after the last. The last rows come first: the other thread asks of the sheet
 * from the first row on, and what is once worked out of a row is there for both.
 */
function nextRun(shared: Int32Array, length: number): number {
  return (Math.ceil(length / RUN) - 1 - Atomics.add(shared, Shared.Begun, 1)) * RUN;
}

/** What the second thread found, once it is through; null where it failed or does nothing any more. */
function waitedFor(shared: Int32Array, port: MessagePort): Told | null {
  for (let runs = -1; Atomics.wait(shared, Shared.End, End.Open, PATIENCE) === "timed-out"; ) {
    const now = Atomics.load(shared, Shared.Runs);
    if (now === runs) return null;
    runs = now;
  }
  if (Atomics.load(shared, Shared.End) !== End.Told) return null;
  return (receiveMessageOnPort(port)?.message as Told | undefined) ?? null;
}

/** True in a thread that was started to judge rows. */
export function isRowsThread(): boolean {
  return (workerData as { kind?: string } | null)?.kind === "rows";
}

/** What the second thread does. */
export function serveRows(): void {
  const { rows, sheet, shared, port } = workerData as RowsStart;
  let end = End.Failed;
  try {
    const told = judged(rows, sheetOfPacked(sheet), shared, port);
    if (told !== null) {
      port.postMessage(told);
      end = End.Told;
    }
  } finally {
    Atomics.store(shared, Shared.End, end);
    Atomics.notify(shared, Shared.End);
  }
}

function judged(apart: RowsApart, sheet: Sheet, shared: Int32Array, port: MessagePort): Told | null {
  const rows = rowsOfApart(apart, sheet);
  if (rows === null) return null;
  const { length } = apart.bars.places;
  // the other thread goes from the first row on
  for (let place = length - 1; place >= 0; place -= 1) {
    if (place % RUN === 0 && Atomics.load(shared, Shared.Habits) !== Habits.Unknown) break;
    rows.settle(place);
  }
  Atomics.wait(shared, Shared.Habits, Habits.Unknown);
  if (Atomics.load(shared, Shared.Habits) !== Habits.Told) return null;
  const judge = rows.judgeBy(receiveMessageOnPort(port)?.message as HabitsApart);
  const places: number[] = [];
  const found: (readonly Finding[])[] = [];
  for (let from = nextRun(shared, length); from >= 0; from = nextRun(shared, length)) {
    for (let place = from; place < Math.min(from + RUN, length); place += 1) {
      const ofRow = judge(place);
      if (ofRow === undefined) continue;
      places.push(place);
      found.push(ofRow);
    }
    Atomics.add(shared, Shared.Runs, 1);
  }
  return { places, found };
}
