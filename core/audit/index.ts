export type { AuditQuestion } from "./audit-question";
export type { AuditedSheet, AuditReport, RowCounts } from "./audit-report";
export type {
  AuditSettings,
  Decided,
  RuleOff,
  Waiver,
} from "./audit-settings";
export { correctionWords } from "./correction-words";
export type { Finding, Fix, FixSafety, Outcome, Severity } from "./finding";
export type { Limits } from "./limits";
export type { NotTold } from "./not-told";
export { readAsCorrected } from "./read-as-corrected";
export { settingsFromText } from "./settings-text";
export type { DecisionAhead, WouldHide } from "./what-it-would-hide";
