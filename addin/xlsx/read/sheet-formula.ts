/** A formula as it stands in the file. */
export interface SheetFormula {
  /** without the equals sign; empty for the further cells of a shared formula */
  readonly text: string;
  readonly kind: "normal" | "array" | "shared" | "dataTable";
  /** range it fills or is shared over; null where none is given */
  readonly range: string | null;
  /** group of a shared formula */
  readonly group: number | null;
}
