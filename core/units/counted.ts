/**
 * A number of things in words; `many` where the plural is more than an s.
 *
 * @example counted(1, "row") // "1 row"
 */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
