import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import type { ColumnKind } from "../bar-row";

/** Columns that hold lengths of any sort. */
export const LENGTH_KINDS: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  "length",
  "totalLength",
  "spacing",
  "former",
  ...DIMENSION_LETTERS,
  "R",
]);
