export type { AuditedSheet, AuditReport, RowCounts } from "./audit-report";
export { type AuditSettings, auditSettings, DEFAULT_SETTINGS, type Silence } from "./audit-settings";
export { correctionWords } from "./correction-words";
export { type Finding, type Fix, type FixSafety, type Outcome, SEVERITIES, type Severity } from "./finding";
export type { Limits } from "./limits";
export { readAsCorrected } from "./read-as-corrected";
export { type AuditQuestion, recheck, runAudit } from "./run-audit";
export { settingsFromText, settingsToText } from "./settings-text";
