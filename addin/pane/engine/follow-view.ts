import type { CellEdit } from "../../workbook/workbook-port";
import type { CellContent } from "./audit-view";

/** What a change of some cells makes necessary in others, and what it comes to. */
export interface FollowView {
  /** lengths, masses and counts of the same rows that no longer agree */
  readonly edits: readonly (CellEdit & { readonly before: CellContent })[];
  /** the steel before and after, in words */
  readonly effect: string;
}
