import { type AuditSettings, auditSettings } from "./audit-settings";
import type { Example } from "./rule";
import { settingsFromText } from "./settings-text";

/** The settings that a rule's example stands under. */
export function exampleSettings({ kept, limits }: Example): AuditSettings {
  return kept === undefined ? auditSettings.parse({ limits: limits ?? {} }) : settingsFromText(kept);
}
