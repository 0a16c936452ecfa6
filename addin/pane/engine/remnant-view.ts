import type { BookedCut, RemnantChange } from "../../../core/cutting";
import type { CellEdit } from "../../workbook/workbook-port";

/** What a cut list would change on the Shop sheet, shown before anything is written. */
export interface RemnantView {
  /** name of the Shop sheet; null where the workbook has none */
  readonly shopSheet: string | null;
  /** why nothing can be written, with the remedy; null where it can */
  readonly problem: string | null;
  readonly changes: readonly RemnantChange[];
  readonly edits: readonly CellEdit[];
  /** row of a heading of our own that is written too */
  readonly headingRow: number | null;
  readonly notes: readonly string[];
  /** mm, shortest rest that is written */
  readonly leastRemnant: number;
  /** what is remembered of the cut once it is written */
  readonly cut: BookedCut;
}
