import type { BarFacts } from "../bar/bar-facts";
import type { Sheet } from "../schedule/sheet";
import type { AuditSettings, RuleOff, Waiver } from "./audit-settings";

/** A waiver that no finding answers to any longer. */
export interface OutdatedWaiver {
  readonly waiver: Waiver;
  readonly sheet: Sheet;
  /** the bar that it was given for; null where it is gone, or it was for the whole sheet */
  readonly row: BarFacts | null;
}

/** What the workbook keeps of its user's decisions, beside what became of them. */
export interface SettingsFacts {
  readonly settings: AuditSettings;
  readonly outdated: readonly OutdatedWaiver[];
  /** rules turned off of which that is not obeyed, because they find what is unsafe */
  readonly notObeyed: readonly {
    readonly rule: string;
    readonly words: string;
    readonly decision: RuleOff;
  }[];
  /** where a finding about the settings as a whole is shown */
  readonly firstSheet: Sheet;
}
