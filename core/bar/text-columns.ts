import type { ColumnKind, TableReading } from "../schedule/bar-row";

const WORDED: readonly ColumnKind[] = ["remark", "shape", "member"];
const NUMBERED: ReadonlySet<ColumnKind> = new Set(["mark", "size", "members", "each", "total", "length"]);

/** Columns of a table whose texts may say more of a bar: remarks, sketches, descriptions and those that no word heads. */
export function textColumns(table: TableReading): readonly number[] {
  let columns = known.get(table);
  if (columns === undefined) {
    columns = columnsWithTexts(table);
    known.set(table, columns);
  }
  return columns;
}

const known = new WeakMap<TableReading, readonly number[]>();

function columnsWithTexts(table: TableReading): readonly number[] {
  const named = WORDED.flatMap((kind) => table.columns.get(kind)?.column ?? []);
  const unknown = (table.unknownHeaders ?? []).map(({ column }) => column);
  const taken = new Set(
    [...table.columns].flatMap(([kind, { column }]) => (NUMBERED.has(kind) ? column : [])),
  );
  return [...new Set([...named, ...unknown])].filter((column) => !taken.has(column));
}
