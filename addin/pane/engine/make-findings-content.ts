import { findingsSheet } from "../../workbook/findings-sheet";
import type { SheetContent } from "../../workbook/workbook-port";
import { barsRead, type KeptCheck } from "./kept-check";

/** The findings sheet of a checked sheet: all findings, and the tonnes with their chart. Throws where it holds no bars. */
export function findingsContent(kept: KeptCheck): SheetContent {
  const {
    sheet,
    shop,
    audit: { report },
  } = kept;
  barsRead(kept);
  return findingsSheet(report, shop === null ? [sheet] : [sheet, shop]);
}
