import type { ValueColumn } from "./value-column";

/** How many of some rows differ in these columns: a bar that stands there twice is one. */
export function differingRows(
  rows: readonly number[],
  columns: readonly number[],
  byPlace: ReadonlyMap<number, ValueColumn>,
): number {
  const own = columns.map((column) => byPlace.get(column));
  return new Set(rows.map((row) => own.map((column) => column?.ids[row] ?? -1).join())).size;
}
