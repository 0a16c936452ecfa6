import type { AuditSettings } from "../../core/audit/audit-settings";
import { settingsFromText } from "../../core/audit/settings-text";
import type { Book } from "./open-book";

/** Waivers, limits, rules turned off and corrected columns, as the workbook keeps them. */
export function auditSettingsOf(book: Book): AuditSettings {
  return settingsFromText(book.setting("Barwright.Audit"));
}
