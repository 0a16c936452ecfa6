import { auditSettings, DEFAULT_SETTINGS } from "../../../core/audit/audit-settings";
import { runAudit } from "../../../core/audit/run-audit";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import type { Sheet } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import type { AuditDesk, AuditQuestionText } from "./audit-desk";
import { auditView } from "./make-audit-view";
import { barView } from "./make-bar-view";

interface LastAudit {
  readonly sheet: Sheet;
  readonly reading: ScheduleReading;
  readonly standard: Standard;
}

/** A desk that works where it stands. */
export function createLocalDesk(): AuditDesk {
  const audits = new Map<string, LastAudit>();
  return {
    async audit(question) {
      const standard = standardOf(question.standard);
      const report = runAudit({ sheets: [question.sheet], standard, settings: settingsOf(question) });
      const reading = report.sheets[0]?.reading;
      if (reading === undefined) throw new Error(`sheet ${question.sheet.name} could not be read`);
      audits.set(question.sheet.name, { sheet: question.sheet, reading, standard });
      return auditView(report, question.sheet);
    },
    async bar(name, row) {
      const last = audits.get(name);
      return last === undefined
        ? null
        : barView(last.sheet, last.reading, last.standard, row - last.sheet.top);
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
