import type { RowClass } from "../bar-row";
import type { RowReason } from "./row-reason";

/** What a row was taken for, and why. */
export interface RowVerdict {
  readonly class: RowClass;
  readonly because: RowReason;
}
