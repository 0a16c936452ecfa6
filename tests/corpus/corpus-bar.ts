export type BarKind = "straight" | "ell" | "u" | "zed" | "stool" | "link" | "other";

/** One bar of a corpus schedule, as its recipe writes it into cells; lengths mm. */
export interface CorpusBar {
  readonly member: string;
  readonly mark: string;
  readonly kind: BarKind;
  /** the size as the practice writes it: "H16", "N16", "#5", 16 */
  readonly size: string | number;
  readonly diameter: number;
  readonly massPerMetre: number;
  /** a code, or legs and turns in the unit of the standard */
  readonly shape: string;
  /** by letter, A first; the fifth is E or R */
  readonly dims: readonly (number | string | null)[];
  readonly length: number | string | null;
  readonly members: number | null;
  readonly each: number | null;
  /** members times each unless typed otherwise */
  readonly total: number | null;
  /** kg of the row */
  readonly mass: number | null;
  readonly grade: string | null;
  readonly former: number | null;
  readonly coating: string | null;
  readonly spacing: number | null;
  readonly revision: string | null;
  readonly remark: string | null;
}
