import type { DimLetter } from "../standards/port";

/** What a column of a schedule can be. */
export type ColumnKind =
  | "member"
  | "mark"
  | "size"
  | "grade"
  | "members"
  | "each"
  | "total"
  | "length"
  | "shape"
  | DimLetter
  | "mass"
  | "unitMass"
  | "pieceMass"
  | "totalLength"
  | "spacing"
  | "former"
  | "coating"
  | "pour"
  | "drawing"
  | "revision"
  | "released"
  | "remark";
