import type { AuditReport } from "../audit";
import type { Sheet } from "../schedule/sheet";
import type { Workshop } from "../shop/workshop";
import type { RowToSend } from "../tickets/row-to-send";
import { isHold, type Ticket } from "../tickets/ticket";
import {
  type AuditTickets,
  type DroppedRow,
  type HeatsOfRow,
  rowsToSend,
  ticketsOfAudit,
} from "../tickets/tickets-of-audit";
import { hiddenWords } from "../totals/tonnage-notes";
import { counted } from "../units/counted";
import { wholeSheetWords } from "./severe-bars";

/** What tickets are made of: an audit, the sheets it read, and the yard. */
export interface TicketsQuestion {
  readonly report: AuditReport;
  readonly sheets: readonly Sheet[];
  readonly workshop: Workshop;
  /** mill certificates of the pieces, by the cut list */
  readonly heats?: HeatsOfRow;
}

export interface TicketsJob<Made = Ticket> {
  readonly tickets: readonly Made[];
  readonly notes: readonly string[];
}

/** A bending ticket for every bar row that still holds. */
export function ticketsOf(books: readonly TicketsQuestion[]): TicketsJob {
  return eachBook(books, ({ report, sheets, workshop, heats }) =>
    ticketsOfAudit(report, sheets, workshop, heats),
  );
}

/** The same rows for bundles and loads, without what a bender needs of them. */
export function toSendOf(books: readonly TicketsQuestion[]): TicketsJob<RowToSend> {
  return eachBook(books, ({ report, sheets, workshop, heats }) =>
    rowsToSend(report, sheets, workshop, heats),
  );
}

function eachBook<Made extends RowToSend>(
  books: readonly TicketsQuestion[],
  make: (book: TicketsQuestion) => AuditTickets<Made>,
): TicketsJob<Made> {
  const made = books.map((book) => {
    const { tickets, dropped } = make(book);
    const { workshop, report } = book;
    return {
      tickets,
      notes: [
        ...shopNote(workshop),
        ...wholeSheetWords(report.findings),
        ...droppedNotes(dropped),
        ...hiddenNotes(tickets),
      ],
    };
  });
  return {
    tickets: made.flatMap(({ tickets }) => tickets),
    notes: made.flatMap(({ notes }) => notes),
  };
}

/** Rows that an older print may still have a ticket of, by their reason. */
function droppedNotes(dropped: readonly DroppedRow[]): string[] {
  const alike = new Map<string, DroppedRow[]>();
  for (const row of dropped) {
    const key = `of ${row.sheet} (${row.why})`;
    const known = alike.get(key);
    if (known === undefined) alike.set(key, [row]);
    else known.push(row);
  }
  return [...alike].map(([words, rows]) => {
    const named = rows
      .slice(0, MOST_ROWS)
      .map(({ row, mark }) => (mark === null ? `${row}` : `${row} mark ${mark}`));
    const more = rows.length > MOST_ROWS ? ` and ${rows.length - MOST_ROWS} more` : "";
    return `no ticket for ${counted(rows.length, "row")} ${words}: ${named.join(", ")}${more}`;
  });
}

/** Rows that nobody sees and whose bars are made and sent. */
function hiddenNotes(made: readonly RowToSend[]): string[] {
  return hiddenWords(
    made
      .filter(({ isHidden }) => isHidden === true)
      .map(({ sheet, row, massEach, count }) => ({ sheet, row, mass: (massEach ?? 0) * (count ?? 0) })),
  );
}

/** rows that are named one by one */
const MOST_ROWS = 40;

function shopNote({ sheet }: Workshop): string[] {
  return sheet === null ? ["the workbook has no Shop sheet: no bender, stock or trial is known"] : [];
}

/** True for a bar that is not to be made until somebody clears it. */
export function isUnmakeable({ warnings }: Pick<Ticket, "warnings">): boolean {
  return warnings.some(isHold);
}
