import type { BarRow, ScheduleReading } from "../../../../core/schedule/bar-row";
import type { ReadOptions } from "../../../../core/schedule/read-options";
import { type Cell, type Sheet, sheetFromRows } from "../../../../core/schedule/sheet";

/** One case of a pattern: a sheet and what is right to read of it. */
export interface PatternCase {
  readonly sheet: Sheet;
  /** an id; BS8666:2005 unless given */
  readonly standard?: string;
  readonly options?: ReadOptions;
  /** what of the reading is looked at, and what it has to be */
  readonly pick: (reading: ScheduleReading) => unknown;
  readonly right: unknown;
}

/** A way in which real schedules are untidy. The docs page and the tests both come from this. */
export interface Pattern {
  readonly number: number;
  readonly name: string;
  /** cells as they are typed */
  readonly seen: string;
  readonly reads: string;
  readonly trust: "read" | "guess shown" | "asks first";
  readonly cases: readonly PatternCase[];
}

export type Typed = Readonly<Partial<Record<Column, Cell>>>;
type Column =
  | "member"
  | "mark"
  | "size"
  | "members"
  | "each"
  | "total"
  | "length"
  | "shape"
  | "A"
  | "B"
  | "C"
  | "D"
  | "E"
  | "rev"
  | "remark";

const COLUMNS: readonly Column[] = [
  ...(["member", "mark", "size", "members", "each", "total", "length", "shape"] as const),
  ...(["A", "B", "C", "D", "E", "rev", "remark"] as const),
];
export const FORM_HEADER: readonly Cell[] = [
  ...["Member", "Bar mark", "Type and size", "No. of members", "No. in each", "Total no."],
  ...["Length of each bar (mm)", "Shape code", "A", "B", "C", "D", "E/R", "Rev letter", "Remarks"],
];

/** A row of the form from its named cells. */
export function formRow(typed: Typed): Cell[] {
  return COLUMNS.map((column) => typed[column] ?? null);
}

/** A plain row that reads without a question, with some cells typed otherwise. */
export function plainRow(typed: Typed = {}): Cell[] {
  const plain: Typed = { mark: "1", size: "H16", members: 1, each: 4, total: 4, length: 1900, shape: "21" };
  return formRow({ member: "Beam 1", ...plain, A: 1000, B: 400, C: 500, ...typed });
}

/** A sheet in the form of BS 8666 with these rows under its header. */
export function form(rows: readonly (readonly Cell[])[], name = "Sheet1"): Sheet {
  return sheetFromRows(name, [FORM_HEADER, ...rows]);
}

/** A sheet of any rows, its header first. */
export function sheetOf(...rows: readonly (readonly Cell[])[]): Sheet {
  return sheetFromRows("Sheet1", rows);
}

export function firstBar(reading: ScheduleReading): BarRow | undefined {
  return reading.bars[0];
}

/** One field of every bar. */
export function each<K extends keyof BarRow>(field: K): (reading: ScheduleReading) => BarRow[K][] {
  return (reading) => reading.bars.map((bar) => bar[field]);
}

/** [field, guess, asks] of every problem. */
export function guesses(reading: ScheduleReading): unknown[] {
  return reading.bars.flatMap((bar) =>
    (bar.problems ?? []).map(({ field, guess, asks }) => [field, guess ?? "unread", asks ?? false]),
  );
}

/** Bar numbers as the standard names them; a dash where the size is no bar of it. */
export function sizes(reading: ScheduleReading): string[] {
  return reading.bars.map(({ size }) =>
    size === null ? "unread" : `${size.prefix}|${size.bar?.size ?? "-"}`,
  );
}
