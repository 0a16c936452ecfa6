import type { ColumnUnit } from "../schedule/bar-row";

/** mm or kg in one of a column's unit. */
export const IN_COLUMN_UNIT: Readonly<Record<ColumnUnit, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  ft: 304.8,
  kg: 1,
  t: 1000,
  lb: 0.45359237,
};
