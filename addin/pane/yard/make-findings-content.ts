import { runAudit, settingsFromText } from "../../../core/audit";
import type { Standard } from "../../../core/standards";
import { findingsSheet } from "../../ooxml/findings-sheet";
import type { SheetContent } from "../workbook-port";
import type { YardQuestion } from "./yard-desk";

/** The findings sheet of a schedule: all findings, and the tonnes with their chart. Throws where there are no bars. */
export function findingsContent(question: YardQuestion, standard: Standard): SheetContent {
  const { sheet, shop } = question;
  const sheets = shop === null ? [sheet] : [sheet, shop];
  const report = runAudit({ sheets, standard, settings: settingsFromText(question.settings) });
  if (report.rows.bars === 0) {
    throw new Error(`sheet ${sheet.name} holds no bars of a schedule: choose the sheet that does`);
  }
  return findingsSheet(report, sheets);
}
