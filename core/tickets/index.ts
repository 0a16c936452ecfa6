export type { Deviation } from "../bar/tolerance-of";
export { type ScheduleHead, scheduleHead } from "../schedule/schedule-head";
export type { Caution } from "./cautions";
export { type CompensationLine, compensationLines } from "./compensation-lines";
export { type InspectionSample, inspectionSample } from "./inspection";
export { INSPECTION_COLUMNS, INSPECTION_SHEET } from "./inspection-sheet.data";
export { isInspectionSheet, judgeInspection } from "./judge-inspection";
export type { TicketQuestion } from "./make-ticket";
export type {
  Ticket,
  TicketAngle,
  TicketAtOnce,
  TicketBend,
  TicketDimension,
  TicketOrder,
  TicketWaived,
  TicketWarning,
} from "./ticket";
export { type AuditTickets, type HeatsOfRow, ticketsOfAudit } from "./tickets-of-audit";
export { type ResidualPoint, type TrialResiduals, trialResiduals } from "./trial-residuals";
