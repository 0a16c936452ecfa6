import type { Finding } from "../../../core/audit/finding";
import type { ColumnReading, ScheduleReading } from "../../../core/schedule/bar-row";
import { columnLetters } from "../../../core/schedule/cell-address";
import { columnWords } from "../../../core/schedule/columns/column-words";
import { type ColumnCorrection, parseReadOptions } from "../../../core/schedule/read-options";
import type { Sheet } from "../../../core/schedule/sheet";
import type { WayOfReading } from "./audit-view";

export const NO_WAYS: readonly WayOfReading[] = [];

/** By what a correction names a column: its header, or its letter where that says too little. */
export function columnName(header: string, all: readonly string[], letter: string): string {
  const isClear = header.trim() !== "" && all.filter((each) => each === header).length === 1;
  return isClear ? header : letter;
}

/**
 * Where the rows contradict a header's words: the column as it is read now, and the other way. Nothing is
 * kept of either until the user chooses.
 */
export function waysOfReading(
  { message }: Finding,
  { guesses = [], tables }: ScheduleReading,
  sheet: Sheet,
): readonly WayOfReading[] {
  const guess = guesses.find(({ reason, otherwise }) => otherwise !== undefined && reason === message);
  const { column, otherwise } = guess ?? {};
  if (column === undefined || column === null || otherwise === undefined) return NO_WAYS;
  const columns = tables.flatMap((table) => [...table.columns.values()]);
  const now = columns.find((each) => each.column === column);
  if (now === undefined) return NO_WAYS;
  const name = nameOf(now, columns, sheet);
  const isElsewhere = columns.find((each) => each.column === otherwise.column) ?? now;
  return [
    way(name, now.kind, now.unit, "Right as read now"),
    way(nameOf(isElsewhere, columns, sheet), otherwise.kind, otherwise.unit, "Read it the other way"),
  ].flatMap((each) => each ?? []);
}

function nameOf({ header, column }: ColumnReading, all: readonly ColumnReading[], sheet: Sheet): string {
  const headers = all.map((each) => each.header);
  return columnName(header, headers, columnLetters(sheet.left + column));
}

/** Null for what no correction can say. */
function way(column: string, kind: string, unit: string | null, lead: string): WayOfReading | null {
  const wanted = { column, kind: kind === "other" ? "ignored" : kind, ...(unit === null ? {} : { unit }) };
  const { options, wrong } = parseReadOptions({ columns: [wanted] });
  const correction: ColumnCorrection | undefined = options.columns?.[0];
  if (wrong !== null || correction?.kind === undefined) return null;
  const taken = `${columnWords(correction.kind)}${unit === null ? "" : ` in ${unit}`}`;
  return { words: `${lead}: ${column} is ${taken}`, correction };
}
