import { cuttingSupply } from "../cutting/cutting-supply";
import type { SizePlan } from "../cutting/plan-by-size";
import { rowOfPiece } from "../cutting/row-of-piece";
import type { Workshop } from "../shop/workshop";
import type { Standard } from "../standards/port";
import { holdsOfTicket, type TicketHolds } from "../tickets/holds-of-ticket";
import type { Ticket, TicketHeat } from "../tickets/ticket";
import type { HeatsOfRow } from "../tickets/tickets-of-audit";
import { type CutListQuestion, type PiecesOfBook, piecesOf, planPieces } from "./cut-list";

/** What came of one heat, or of stock without a certificate beside it. */
export interface HeatUse {
  /** number of the mill's certificate; null where the stock says none */
  readonly heat: string | null;
  readonly size: string;
  /** bars taken, by stock length, mm */
  readonly bars: readonly { readonly length: number; readonly remnant: boolean; readonly bars: number }[];
  readonly rows: readonly HeatRow[];
}

/** Pieces of one row that came of a heat, with what holds them back. */
export interface HeatRow extends TicketHolds {
  readonly sheet: string;
  /** address of its length */
  readonly cell: string;
  readonly mark: string | null;
  readonly member: string | null;
  readonly pour: string | null;
  readonly pieces: number;
}

const NO_WORDS = { warnings: [], waived: [] };

/** The cut list of schedules whose stock is written down with its heats; no plan where none is. */
export function plansWithHeats(asked: CutListQuestion): readonly SizePlan[] {
  return saysNoHeat(asked.workshop) ? [] : plansOfPieces(piecesOf(asked), asked.workshop, asked.standard);
}

const saysNoHeat = ({ shop }: Workshop): boolean => shop.stock.every(({ heat }) => heat === null);

/** The same of rows, whichever books they come from. */
export function plansOfPieces(
  pieces: PiecesOfBook,
  workshop: Workshop,
  standard: Standard,
): readonly SizePlan[] {
  if (saysNoHeat(workshop)) return [];
  return planPieces(pieces, cuttingSupply(workshop.shop, standard, null), standard).groups;
}

/** Heats of each row's pieces by the cut list; a size whose stock says no heat gives none. */
export function heatsByRow(groups: readonly SizePlan[]): HeatsOfRow {
  const byRow = new Map<string, TicketHeat[]>();
  for (const { row, heat, pieces } of groups.flatMap(({ heats }) => heats)) {
    const key = JSON.stringify([row.sheet, rowOfPiece(row)]);
    byRow.set(key, [...(byRow.get(key) ?? []), { heat, pieces }]);
  }
  return (sheet, row) => byRow.get(JSON.stringify([sheet, row])) ?? [];
}

/**
 * Every heat of the cut list with the bars taken and the rows that its pieces went to, so that a certificate
 * is followed from the rack to the pour and back. Pours and members are those of the tickets.
 */
export function heatUses(
  groups: readonly SizePlan[],
  tickets: readonly Pick<Ticket, "sheet" | "row" | "member" | "pour" | "warnings" | "waived">[] = [],
): HeatUse[] {
  const ticketOf = new Map(tickets.map((ticket) => [JSON.stringify([ticket.sheet, ticket.row]), ticket]));
  return groups.flatMap(({ size, list, heats }) => {
    const names = [...new Set(heats.map(({ heat }) => heat))];
    return names.map((name): HeatUse => {
      const bars = new Map<string, { length: number; remnant: boolean; bars: number }>();
      for (const { stock, fromRemnant, heats: drawn } of list) {
        for (const { heat, bars: taken } of drawn) {
          if (heat !== name) continue;
          const key = `${stock}|${fromRemnant}`;
          const known = bars.get(key) ?? { length: stock, remnant: fromRemnant, bars: 0 };
          bars.set(key, { ...known, bars: known.bars + taken });
        }
      }
      const rows = heats.flatMap(({ row, heat, pieces }): HeatRow[] => {
        if (heat !== name) return [];
        const ticket = ticketOf.get(JSON.stringify([row.sheet, rowOfPiece(row)]));
        const { member = null, pour = null } = ticket ?? {};
        const holds = holdsOfTicket(ticket ?? NO_WORDS);
        return [{ sheet: row.sheet, cell: row.cell, mark: row.mark, member, pour, pieces, ...holds }];
      });
      return { heat: name, size, bars: [...bars.values()], rows };
    });
  });
}
