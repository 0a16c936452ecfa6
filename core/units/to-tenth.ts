/**
 * A figure with one decimal at the most, for a message.
 *
 * @example toTenth(41.96) // "42"
 */
export function toTenth(value: number): string {
  return String(Math.round(value * 10) / 10);
}
