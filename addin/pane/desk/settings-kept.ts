import { type AuditSettings, auditSettings, DEFAULT_SETTINGS } from "../../../core/audit/audit-settings";

/** The audit settings of the workbook's JSON; the defaults where it keeps none. Throws where it cannot be read. */
export function settingsKept(settings: string | null): AuditSettings {
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
