import { runAudit, settingsFromText } from "../../../core/audit";
import type { Standard } from "../../../core/standards";
import { findingsSheet } from "../../workbook/findings-sheet";
import type { SheetContent } from "../../workbook/workbook-port";
import { NO_BESIDES, sheetsToRead } from "../desk/besides";
import type { YardQuestion } from "./yard-desk";

/** The findings sheet of a schedule: all findings, and the tonnes with their chart. Throws where there are no bars. */
export function findingsContent(question: YardQuestion, standard: Standard): SheetContent {
  const { sheet, shop, besides = NO_BESIDES } = question;
  const report = runAudit({
    sheets: sheetsToRead(sheet, shop, besides),
    only: sheet.name,
    standard,
    settings: settingsFromText(question.settings),
  });
  if (report.rows.bars === 0) {
    throw new Error(`sheet ${sheet.name} holds no bars of a schedule: choose the sheet that does`);
  }
  return findingsSheet(report, shop === null ? [sheet] : [sheet, shop]);
}
