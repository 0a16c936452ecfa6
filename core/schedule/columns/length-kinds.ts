import type { ColumnKind } from "../bar-row";

/** Columns that hold lengths of any sort. */
export const LENGTH_KINDS: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  "length",
  "totalLength",
  "spacing",
  "former",
  "A",
  "B",
  "C",
  "D",
  "E",
  "F",
  "G",
  "H",
  "J",
  "K",
  "R",
]);
/** Dimension letters but the radius. */
export const DIMS: readonly ColumnKind[] = ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K"];
