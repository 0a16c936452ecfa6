export { scheduleHead } from "../schedule/schedule-head";
export { type CompensationLine, compensationLines } from "./compensation-lines";
export { holdMark, type TicketHolds } from "./holds-of-ticket";
export { type InspectionLine, type InspectionSample, inspectionSample } from "./inspection";
export { INSPECTION_COLUMNS, INSPECTION_SHEET } from "./inspection-sheet.data";
export { isInspectionSheet } from "./is-inspection-sheet";
export { judgeInspection } from "./judge-inspection";
export type { RowToSend } from "./row-to-send";
export type {
  Ticket,
  TicketAngle,
  TicketBend,
  TicketWarning,
} from "./ticket";
export { isHold } from "./ticket";
export { type HeatsOfRow, ticketsOfAudit } from "./tickets-of-audit";
export { type ResidualPoint, type TrialResiduals, trialResiduals } from "./trial-residuals";
