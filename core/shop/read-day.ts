import { dayOfSerial } from "../schedule/cells/date-typed";
import type { Sheet } from "../schedule/sheet";

/**
 * A day as "2030-05-31": a date of the sheet, or a text with the year first, with dots (day first), or with
 * strokes where only one of its numbers can be a month. Null for what is no day, or may be two.
 */
export function readDay(sheet: Sheet, row: number, column: number): string | null {
  const cell = sheet.cell(row, column);
  if (typeof cell === "number")
    return sheet.isDate?.(row, column) === true ? dayOfSerial(cell, sheet.datesFrom1904 === true) : null;
  if (typeof cell !== "string") return null;
  const text = cell.trim();
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? [];
  if (year !== undefined) return written(Number(year), Number(month), Number(day));
  const [, first, sign, second, last] = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(text) ?? [];
  if (first === undefined) return null;
  const [one, other] = [Number(first), Number(second)];
  const isDayFirst = sign === "." || one > MONTHS || one === other;
  if (!isDayFirst && other <= MONTHS) return null;
  return isDayFirst ? written(Number(last), other, one) : written(Number(last), one, other);
}

const MONTHS = 12;

/** Null for a day that no calendar has, such as 31 April. */
function written(year: number, month: number, day: number): string | null {
  const date = new Date(Date.UTC(year, month - 1, day));
  const isReal = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return isReal ? date.toISOString().slice(0, "2030-05-31".length) : null;
}
