import type { Sheet } from "../sheet";

const DAY = 86_400_000;
/** Above it no length in any unit lies, and below it no date that was typed as a fraction. */
const FIRST = 20_000;
/** 31 December 9999, the last that a spreadsheet holds. */
const LAST = 2_958_465;

/** True where a number may be the serial of a date that somebody did not mean to type. */
export function mayBeDate(serial: number): boolean {
  return serial >= FIRST && serial < LAST + 1;
}

/** Month and day of a date's serial number, as somebody typed "3-4"; `from1904` is the workbook's date system. */
export function dateTyped(
  serial: number,
  from1904: boolean,
): { readonly month: number; readonly day: number } {
  const date = dateOf(serial, from1904);
  return { month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

/** The day, as "2030-05-31", where a cell shows its number as a date that somebody did not mean; null elsewhere. */
export function dayAt(sheet: Sheet, row: number, column: number, number: number): string | null {
  if (!mayBeDate(number) || sheet.isDate?.(row, column) !== true) return null;
  return dayOfSerial(number, sheet.datesFrom1904 === true);
}

/** The day of a date's serial number, as "2030-05-31". */
export function dayOfSerial(serial: number, from1904: boolean): string {
  return dateOf(serial, from1904).toISOString().slice(0, "2030-05-31".length);
}

function dateOf(serial: number, from1904: boolean): Date {
  // 1900 is counted as a leap year, which it was not: hence a day before its first
  const first = from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
  return new Date(first + Math.floor(serial) * DAY);
}
