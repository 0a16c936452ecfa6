import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import type { ColumnKind } from "../bar-row";

const WORDS: Readonly<Partial<Record<ColumnKind, string>>> = {
  member: "member",
  mark: "bar mark",
  size: "bar size",
  grade: "grade",
  members: "number of members",
  each: "number in each",
  total: "total number",
  length: "cut length",
  shape: "shape",
  mass: "mass",
  unitMass: "mass per length",
  pieceMass: "mass of one bar",
  totalLength: "total length",
  spacing: "spacing",
  former: "former",
  coating: "coating",
  pour: "pour",
  drawing: "drawing",
  revision: "revision",
  released: "released",
  remark: "remark",
  R: "radius",
};

/** What a column was taken for, in words. */
export function columnWords(kind: ColumnKind | "ignored"): string {
  if (kind === "ignored") return "left out";
  return WORDS[kind] ?? `dimension ${kind}`;
}

/** Everything that a user can take a column for. */
export const COLUMN_KINDS = [...Object.keys(WORDS), ...DIMENSION_LETTERS, "ignored"] as readonly (
  | ColumnKind
  | "ignored"
)[];
