import type { RowClass } from "../bar-row";
import type { RowReason, RowReasonCode } from "./row-reason";

const OF_FOOT: ReadonlySet<RowReasonCode> = new Set([
  ...(["mark-alone", "size-alone", "size-unread", "no-field-read", "no-name"] as const),
]);

/** What stands apart below the last bar, and of which nothing of a bar can be read, is the foot of the sheet: a note. */
export function passOverFoot(classes: RowClass[], reasons: RowReason[], lastBar: number | undefined): void {
  if (lastBar === undefined) return;
  let isApart = false;
  for (let row = lastBar + 1; row < classes.length; row += 1) {
    isApart ||= classes[row] === "blank" || classes[row] === "total";
    if (!isApart) continue;
    if (classes[row] !== "unread" || !OF_FOOT.has((reasons[row] as RowReason).code)) continue;
    classes[row] = "note";
    reasons[row] = { code: "behind-the-list" };
  }
}
