import type { LengthName, MassName } from "./evidence.data";

/** What a column can be as far as arithmetic can tell. */
export type EvidenceRole =
  | "size"
  | "members"
  | "each"
  | "total"
  | "length"
  | "totalLength"
  | "mass"
  | "unitMass"
  | "pieceMass"
  | "bySize"
  /** an amount of the bars of one member, where others count the members */
  | "ofMember"
  | "leg"
  | "run"
  | "spacing"
  | "shape"
  | "mark"
  | "serial"
  | "other";

export type EvidenceUnit = LengthName | MassName;

/** What the words of the header, or the user, say of one column. */
export interface WordReading {
  readonly column: number;
  readonly role: EvidenceRole;
  readonly unit: EvidenceUnit | null;
  /** `written`: the unit stands in the header; `guessed`: only a magnitude or a habit says it; `user`: corrected by hand */
  readonly by: "written" | "guessed" | "user";
  /** the column beside it that holds the inches of whole feet */
  readonly inches?: number;
  /** the number of the size that heads a column by size */
  readonly size?: number;
}

export type Words = ReadonlyMap<number, WordReading>;

/** Roles that carry an amount: the ones that words and arithmetic can disagree about. */
export const QUANTITIES: ReadonlySet<EvidenceRole> = new Set<EvidenceRole>([
  "size",
  "members",
  "each",
  "total",
  "length",
  "totalLength",
  "mass",
  "unitMass",
  "bySize",
]);
