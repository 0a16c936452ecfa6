import type { ScheduleReading } from "./bar-row";
import { rowReasonText } from "./rows/row-reason-text";

/** The rows that could not be taken for anything, by row of the used range, each with its reason in words. */
export function unreadRows({
  rowClasses,
  rowReasons,
}: Pick<ScheduleReading, "rowClasses" | "rowReasons">): readonly {
  readonly row: number;
  readonly reason: string;
}[] {
  const unread: { row: number; reason: string }[] = [];
  for (let row = rowClasses.indexOf("unread"); row >= 0; row = rowClasses.indexOf("unread", row + 1)) {
    const because = rowReasons[row];
    unread.push({ row, reason: because === undefined ? "" : rowReasonText(because) });
  }
  return unread;
}
