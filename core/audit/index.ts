export type { AuditQuestion } from "./audit-question";
export type { AuditedSheet, AuditReport, RowCounts } from "./audit-report";
export {
  type AuditSettings,
  auditSettings,
  DEFAULT_SETTINGS,
  type Decided,
  type RuleOff,
  type Waiver,
} from "./audit-settings";
export { correctionWords } from "./correction-words";
export { type Finding, type Fix, type FixSafety, type Outcome, SEVERITIES, type Severity } from "./finding";
export type { Limits } from "./limits";
export type { NotTold } from "./not-told";
export { readAsCorrected } from "./read-as-corrected";
export { recheck, runAudit } from "./run-audit";
export { settingsFromText, settingsToText } from "./settings-text";
export { type DecisionAhead, type WouldHide, whatItWouldHide } from "./what-it-would-hide";
