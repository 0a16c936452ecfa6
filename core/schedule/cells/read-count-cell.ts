import type { BarRow, CellProblem } from "../bar-row";
import { type Cell, cellErrorReason, isCellError } from "../sheet";
import { guessed, type RowContext, sameAsMark, unread } from "./cell-answer";
import { shortened } from "./longest-text";
import { MOST_BARS } from "./most-bars";
import type { CountReading } from "./read-count-text";

type CountKind = "members" | "each" | "total";

/** What a count's cell says beyond a plain number. */
export interface CountSaid {
  readonly value: number | null;
  readonly problem: CellProblem | null;
  /** written as members x bars each */
  readonly members?: number | null;
  readonly each?: number | null;
  /** a size behind the count, as in 2x3T20 */
  readonly size?: string | null;
}

export type CountAnswer = number | null | CountSaid;

/** What a cell says under a column of counts. */
export function readCountCell(
  field: CountKind,
  column: number,
  cell: Cell | undefined,
  readText: (typed: string) => CountReading,
  context: RowContext,
): CountAnswer {
  if (column < 0 || cell === null || cell === undefined) return null;
  const day = typeof cell === "number" ? context.dayAt(column, cell) : null;
  if (day === null && typeof cell === "number" && Number.isInteger(cell) && cell >= 0 && cell < MOST_BARS)
    return cell;
  const place = { field, column, typed: cell };
  if (day !== null)
    return unread(place, `a date stands here (${day}), and no count of bars: type the number`);
  if (typeof cell !== "string") return unread(place, reasonNoCount(cell));
  const reading = readText(cell);
  const pick = (bar: BarRow): number | null => bar[field];
  switch (reading.is) {
    case "blank":
      return null;
    case "ditto":
      return context.above === null ? null : pick(context.above);
    case "unread":
      return unread(place, reading.reason);
    case "same-as":
      return sameAsMark<number>(place, reading.mark, pick, context);
    default:
      if (reading.guess === null) return { ...reading, problem: null };
  }
  const { guess, asks, reason, value } = reading;
  const told = guessed(place, value, { guess, asks, reason, proposal: value }, context);
  return told.value === null ? told : { ...reading, problem: told.problem };
}

function reasonNoCount(cell: Cell): string {
  if (isCellError(cell)) return cellErrorReason(cell);
  const isTooMany = typeof cell === "number" && cell >= MOST_BARS;
  const isBelow = typeof cell === "number" && cell < 0;
  const what = isTooMany ? "is too large" : isBelow ? "is negative" : "is no whole number";
  return `"${shortened(String(cell))}" ${what}, so it is no count of bars`;
}
