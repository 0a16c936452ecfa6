/** The date of today as decisions keep it: YYYY-MM-DD, by the clock of this place. */
export function today(now: Date = new Date()): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
