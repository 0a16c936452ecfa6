import { holdsOfTicket, type TicketHolds } from "./holds-of-ticket";
import type { Ticket } from "./ticket";

/** A length of a bar to be measured, with what holds the bar back. mm. */
export interface InspectionLine extends TicketHolds {
  readonly sheet: string;
  /** the sheet's own row number, from 1 */
  readonly row: number;
  readonly mark: string | null;
  readonly size: string;
  readonly pour: string | null;
  /** "cut length", "A", "leg 1" */
  readonly what: string;
  readonly wanted: number;
  readonly least: number;
  readonly most: number;
}

/** A mark of which nothing can be measured. */
export interface NotInspected extends Pick<InspectionLine, "sheet" | "row" | "mark"> {
  readonly why: string;
}

/** Bars drawn to be measured, and how they were drawn. */
export interface InspectionSample {
  readonly lines: readonly InspectionLine[];
  /** marks that no sample can hold, each with the reason */
  readonly left: readonly NotInspected[];
  /** marks drawn, and marks they were drawn from */
  readonly marks: number;
  readonly from: number;
  /** the sampling in words, as it stands over the list */
  readonly words: string;
}

/**
 * Marks to be measured: of each pour and size the first and every `every`-th after it, in the order of the
 * schedule, so that whoever draws again draws the same. Each has its cut length and its dimensions with what
 * the standard allows; the leg that takes up the tolerance is left out, and a mark that no tolerance is held for is named apart.
 */
export function inspectionSample(tickets: readonly Ticket[], every: number): InspectionSample {
  const seen = new Map<string, number>();
  const known = tickets.filter((ticket) => whyNot(ticket) === null);
  const left = tickets.flatMap((ticket): NotInspected[] => {
    const why = whyNot(ticket);
    return why === null ? [] : [{ sheet: ticket.sheet, row: ticket.row, mark: ticket.mark, why }];
  });
  const drawn = known.filter(({ pour, size }) => {
    const key = JSON.stringify([pour, size]);
    const at = seen.get(key) ?? 0;
    seen.set(key, at + 1);
    return at % every === 0;
  });
  const which =
    every === 1 ? "every mark" : `of each pour and size the first mark and every ${ordinal(every)} after it`;
  const words = `Sample: ${which}, in the order of the schedule: ${drawn.length} of ${tickets.length} marks${leftWords(left.length)}. Limits by ${sources(drawn)}.`;
  return { lines: drawn.flatMap(linesOf), left, marks: drawn.length, from: tickets.length, words };
}

function leftWords(left: number): string {
  return left === 0 ? "" : `, without ${left} of which nothing can be measured`;
}

/** Null where something of the bar can be measured. */
function whyNot(ticket: Ticket): string | null {
  if (ticket.count === 0) return "its count is 0, so none is to be made";
  if (linesOf(ticket).length > 0) return null;
  if (ticket.cut === null && ticket.dimensions.length === 0) return "no length of it is read";
  return ticket.toleranceCite === null
    ? `${ticket.standard} holds no tolerance for it`
    : "no tolerance is held for its lengths";
}

/** "3rd", "11th", "22nd" */
function ordinal(count: number): string {
  const teens = count % 100 > 10 && count % 100 < 14;
  return `${count}${(teens ? undefined : ["th", "st", "nd", "rd"][count % 10]) ?? "th"}`;
}

/** What of a bar can be measured against a tolerance; empty where the standard holds none. */
export function linesOf(ticket: Ticket): InspectionLine[] {
  const { sheet, row, mark, size, pour, cut, dimensions } = ticket;
  const measured = [
    ...(cut === null ? [] : [{ name: "cut length", length: cut.length, tolerance: cut.tolerance }]),
    ...dimensions,
  ];
  const holds = holdsOfTicket(ticket);
  return measured.flatMap(({ name, length, tolerance }) => {
    if (tolerance === null) return [];
    const { plus, minus } = tolerance;
    const limits = { wanted: length, least: length - minus, most: length + plus };
    return [{ sheet, row, mark, size, pour, what: name, ...limits, ...holds }];
  });
}

function sources(tickets: readonly Ticket[]): string {
  const cites = tickets.map(({ toleranceCite }) => toleranceCite).filter((cite) => cite !== null);
  const names = cites.map(({ document, clause }) => `${document} ${clause ?? ""}`.trim());
  return [...new Set(names)].join("; ") || "no standard that holds any";
}
