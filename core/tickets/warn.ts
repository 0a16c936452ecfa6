import type { TicketWarning } from "./ticket";

/** Adds a warning of the ticket's own to those of the audit. */
export function warn(
  warnings: TicketWarning[],
  text: string,
  unsure: boolean,
  severity: TicketWarning["severity"] = "doubtful",
): void {
  warnings.push({ severity, unsure, text, hold: false });
}
