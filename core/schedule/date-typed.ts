const DAY = 86_400_000;
/** Above it no length in any unit lies, and below it no date that was typed as a fraction. */
const FIRST = 20_000;
/** 31 December 9999, the last that a spreadsheet holds. */
const LAST = 2_958_465;

/** True where a number may be the serial of a date that somebody did not mean to type. */
export function mayBeDate(serial: number): boolean {
  return serial >= FIRST && serial < LAST + 1;
}

/** Month and day of a date's serial number in the 1900 date system, as somebody typed "3-4". */
export function dateTyped(serial: number): { readonly month: number; readonly day: number } {
  const date = new Date(Date.UTC(1899, 11, 30) + Math.floor(serial) * DAY);
  return { month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}
