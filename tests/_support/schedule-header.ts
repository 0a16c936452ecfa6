import type { Cell } from "../../core/schedule";

/** The header of a small schedule that names pours. */
export const SCHEDULE_HEADER: Cell[] = [
  ...["Pour", "Member", "Bar mark", "Size", "Total no.", "Length", "Shape code", "A", "B", "C"],
];
