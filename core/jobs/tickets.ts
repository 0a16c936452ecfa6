import type { AuditReport } from "../audit";
import type { Sheet } from "../schedule/sheet";
import type { Workshop } from "../shop/workshop";
import { isHold, type Ticket } from "../tickets/ticket";
import { type HeatsOfRow, ticketsOfAudit } from "../tickets/tickets-of-audit";

/** What tickets are made of: an audit, the sheets it read, and the yard. */
export interface TicketsQuestion {
  readonly report: AuditReport;
  readonly sheets: readonly Sheet[];
  readonly workshop: Workshop;
  /** mill certificates of the pieces, by the cut list */
  readonly heats?: HeatsOfRow;
}

export interface TicketsJob {
  readonly tickets: readonly Ticket[];
  readonly notes: readonly string[];
}

/** A bending ticket for every bar row that still holds. */
export function ticketsOf(books: readonly TicketsQuestion[]): TicketsJob {
  const made = books.map(({ report, sheets, workshop, heats }) => {
    const { tickets, dropped } = ticketsOfAudit(report, sheets, workshop, heats);
    const names = [...new Set(dropped.map(({ sheet }) => sheet))];
    const notes = names.map((name) => {
      const rows = dropped.filter(({ sheet }) => sheet === name).map(({ row }) => row);
      return `no ticket for rows struck through or superseded: ${name} ${rows.join(", ")}`;
    });
    return { tickets, notes: [...shopNote(workshop), ...notes] };
  });
  return {
    tickets: made.flatMap(({ tickets }) => tickets),
    notes: made.flatMap(({ notes }) => notes),
  };
}

function shopNote({ sheet }: Workshop): string[] {
  return sheet === null ? ["the workbook has no Shop sheet: no bender, stock or trial is known"] : [];
}

/** True for a bar that may hurt somebody for certain, or that cannot be made as it stands. */
export function isUnmakeable({ warnings, order }: Ticket): boolean {
  return warnings.some(isHold) || (order.kind === "blocked" && order.sure);
}
