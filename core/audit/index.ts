export type { AuditReport, RowCounts } from "./audit-report";
export type {
  AuditSettings,
  Waiver,
} from "./audit-settings";
export { correctionWords } from "./correction-words";
export type { NotTold } from "./not-told";
export { readAsCorrected } from "./read-as-corrected";
export {
  type HabitsApart,
  type RowsApart,
  type RowsBegun,
  type RowsHelped,
  type RowsHelper,
  rowsOfApart,
} from "./rows-apart";
export { settingsFromText } from "./settings-text";
