import type { AuditSettings } from "../../../core/audit/audit-settings";
import type { Audit } from "../../../core/audit/audit-state";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import type { Sheet } from "../../../core/schedule/sheet";

/** What the engine keeps of a sheet's last check: its pages are made of it. */
export interface KeptCheck {
  readonly sheet: Sheet;
  readonly shop: Sheet | null;
  /** names of the other sheets that were read with it */
  readonly otherSheets: readonly string[];
  /** where measured lengths stand; null where the workbook has no such sheet */
  readonly inspection: Sheet | null;
  readonly settings: AuditSettings;
  /** the id that the user or the workbook chose; null where nobody did */
  readonly standardChosen: string | null;
  readonly audit: Audit;
}

/** The reading of the sheet that was checked. Throws where it holds no bars. */
export function barsRead({ sheet, audit: { report } }: KeptCheck): ScheduleReading {
  const reading = report.sheets[0]?.reading;
  if (reading !== undefined && reading.bars.length > 0) return reading;
  throw new Error(`sheet ${sheet.name} holds no bars of a schedule: choose the sheet that does`);
}
