import type { AuditReport } from "../../../core/audit/audit-report";
import type { AuditSettings } from "../../../core/audit/audit-settings";
import { recheck, runAudit } from "../../../core/audit/run-audit";
import { settingsFromText } from "../../../core/audit/settings-text";
import type { Sheet } from "../../../core/schedule/sheet";
import type { AuditDesk } from "./audit-desk";
import type { AuditView } from "./audit-view";
import { sheetsToRead } from "./besides";
import { auditView } from "./make-audit-view";
import { barView } from "./make-bar-view";
import { standardAsked } from "./standard-asked";

interface LastAudit {
  readonly sheet: Sheet;
  readonly shop: Sheet | null;
  readonly otherSheets: readonly string[];
  readonly report: AuditReport;
  readonly settings: AuditSettings;
}

/** A desk that works where it stands. */
export function createLocalDesk(): AuditDesk {
  const audits = new Map<string, LastAudit>();
  const keep = (last: LastAudit): AuditView => {
    audits.set(last.sheet.name, last);
    return auditView(last.report, last.sheet, last.settings, last.shop, last.otherSheets);
  };
  return {
    async audit(question) {
      const standard = standardAsked(question.standard);
      const settings = settingsFromText(question.settings);
      const { sheet, shop, besides } = question;
      const sheets = sheetsToRead(sheet, shop, besides);
      return keep({
        sheet,
        shop,
        otherSheets: [...besides.before, ...besides.behind].map(({ name }) => name),
        settings,
        report: runAudit({ sheets, only: sheet.name, standard, settings }),
      });
    },
    async recheck({ sheet, firstRow, lastRow }) {
      const last = audits.get(sheet.name);
      if (last === undefined) throw new Error(`sheet ${sheet.name} was not checked yet: check it first`);
      const isMoved = last.sheet.top !== sheet.top || last.sheet.left !== sheet.left;
      const first = isMoved ? 0 : firstRow - sheet.top;
      const end = isMoved || last.sheet.rowCount !== sheet.rowCount ? Infinity : lastRow - sheet.top;
      return keep({ ...last, sheet, report: recheck(last.report, sheet, first, end) });
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
    stop() {},
  };
}
