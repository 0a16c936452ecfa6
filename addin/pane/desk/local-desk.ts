import type { AuditReport } from "../../../core/audit/audit-report";
import { auditSettings, DEFAULT_SETTINGS } from "../../../core/audit/audit-settings";
import { recheck, runAudit } from "../../../core/audit/run-audit";
import type { Sheet } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import type { AuditDesk, AuditQuestionText } from "./audit-desk";
import type { AuditView } from "./audit-view";
import { auditView } from "./make-audit-view";
import { barView } from "./make-bar-view";

interface LastAudit {
  readonly sheet: Sheet;
  readonly report: AuditReport;
}

/** A desk that works where it stands. */
export function createLocalDesk(): AuditDesk {
  const audits = new Map<string, LastAudit>();
  const keep = (report: AuditReport, sheet: Sheet): AuditView => {
    audits.set(sheet.name, { sheet, report });
    return auditView(report, sheet);
  };
  return {
    async audit(question) {
      const standard = standardOf(question.standard);
      const settings = settingsOf(question);
      return keep(runAudit({ sheets: [question.sheet], standard, settings }), question.sheet);
    },
    async recheck({ sheet, firstRow, lastRow }) {
      const last = audits.get(sheet.name);
      if (last === undefined) throw new Error(`sheet ${sheet.name} was not checked yet: check it first`);
      const isMoved = last.sheet.top !== sheet.top || last.sheet.left !== sheet.left;
      const first = isMoved ? 0 : firstRow - sheet.top;
      const end = isMoved || last.sheet.rowCount !== sheet.rowCount ? Infinity : lastRow - sheet.top;
      return keep(recheck(last.report, sheet, first, end), sheet);
    },
    async bar(name, row) {
      const last = audits.get(name);
      const reading = last?.report.sheets[0]?.reading;
      if (last === undefined || reading === undefined) return null;
      return barView(last.sheet, reading, last.report.standard, row - last.sheet.top);
    },
    async forget() {
      audits.clear();
    },
  };
}

function standardOf(id: string): Standard {
  const standard = resolveStandard(id);
  if (isRefusal(standard)) throw new Error(refusalText(standard));
  return standard;
}

function settingsOf({ settings }: AuditQuestionText) {
  if (settings === null) return DEFAULT_SETTINGS;
  const read = auditSettings.safeParse(parsed(settings));
  if (!read.success) {
    throw new Error(
      "the workbook's name Barwright.Audit holds no settings that can be read: delete the name, or put it right",
    );
  }
  return read.data;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
