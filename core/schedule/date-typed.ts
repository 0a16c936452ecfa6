const DAY = 86_400_000;

/** Month and day of a date's serial number in the 1900 date system, as somebody typed "3-4". */
export function dateTyped(serial: number): { readonly month: number; readonly day: number } {
  const date = new Date(Date.UTC(1899, 11, 30) + Math.floor(serial) * DAY);
  return { month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}
