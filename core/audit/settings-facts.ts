import type { BarFacts } from "../bar/bar-facts";
import type { Sheet } from "../schedule/sheet";
import type { AuditSettings, Silence } from "./audit-settings";

/** A silence that no finding answers to any longer. */
export interface OutdatedSilence {
  readonly silence: Silence;
  readonly sheet: Sheet;
  /** the bar that it was given for; null where it is gone, or it was for the whole sheet */
  readonly row: BarFacts | null;
}

/** What the workbook keeps of its user's decisions, beside what became of them. */
export interface SettingsFacts {
  readonly settings: AuditSettings;
  readonly outdated: readonly OutdatedSilence[];
  /** where a finding about the settings as a whole is shown */
  readonly firstSheet: Sheet;
}
