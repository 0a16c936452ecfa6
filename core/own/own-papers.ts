import type { Sheet } from "../schedule/sheet";

/** First words of every findings sheet that is written: by them it is known again. */
export const FINDINGS_MARK = "Findings under ";

/**
 * True of a findings sheet that an earlier check wrote. It quotes documents and adds tonnes up, so that it is
 * neither a schedule nor a summary, and names no document that the schedules go by.
 */
export function isFindingsSheet({ rowCount, top, left, cell }: Sheet): boolean {
  const first = rowCount > 0 && top === 0 && left === 0 ? cell(0, 0) : null;
  return typeof first === "string" && first.startsWith(FINDINGS_MARK);
}
