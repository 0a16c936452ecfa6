import { type AuditSettings, auditSettings, DEFAULT_SETTINGS } from "../../core/audit/audit-settings";
import { InputRefused } from "./input-refused";
import type { Book } from "./open-book";

/** Silences, limits and rules turned off, as the workbook keeps them. */
export function auditSettingsOf(book: Book): AuditSettings {
  const stored = book.setting("Barwright.Audit");
  if (stored === null) return DEFAULT_SETTINGS;
  try {
    return auditSettings.parse(JSON.parse(stored));
  } catch {
    throw new InputRefused(
      "the workbook's name Barwright.Audit holds no settings that can be read: delete the name",
    );
  }
}
