import type { ColumnKind, TableReading } from "../bar-row";

/** True where the column of that kind is one of those filled. */
export function isFilledIn(table: TableReading, kind: ColumnKind, filled: readonly number[]): boolean {
  const column = table.columns.get(kind)?.column;
  return column !== undefined && filled.includes(column);
}
