import type { BarRow, ColumnKind } from "../bar-row";

/** The column that holds a row's field; its total length or mass may stand under the column of its size. */
export function amountColumn({ table, sizedAt = null }: BarRow, field: ColumnKind): number | null {
  const own = table.columns.get(field)?.column;
  if (own !== undefined) return own;
  const isMass = table.bySizeUnit === "kg" || table.bySizeUnit === "t";
  return field === (isMass ? "mass" : "totalLength") ? sizedAt : null;
}
