import { ticketPage } from "../../addin/print/ticket-page";
import type { Ticket } from "../../core/tickets";
import { SHOP, ticketsOf } from "../core/tickets/ticket-sheets";
import type { Bench } from "./bench";

const ROWS = 1000;

/** Shapes as schedules mix them: straights, right angles, U bars, links, cranks. */
const SHAPES: readonly (readonly (string | number | null)[])[] = [
  ["H16", "00", 4000],
  ["H16", "11", 1250, 400],
  ["H16", "21", 600, 900, 600],
  ["H12", "51", 420, 380, 130],
  ["H20", "26", 3300, 430, 1200, 90],
  ["H12", "21", 500, 320, 500],
];

const bench: Bench = {
  name: "1,000 tickets with their page",
  async run() {
    const rows = Array.from({ length: ROWS }, (_, row) => {
      const [size, shape, ...dims] = SHAPES[row % SHAPES.length] ?? [];
      // no two alike: every one is searched and drawn anew
      const [first, ...rest] = dims;
      const own = [Number(first) + Math.floor(row / SHAPES.length), ...rest];
      return ["B1", String(row + 1), size ?? null, 1, 4, 4, null, shape ?? null, ...own];
    });
    let tickets: Ticket[] = [];
    const make = once(() => {
      tickets = ticketsOf(rows, SHOP);
    });
    let page = "";
    const print = once(() => {
      page = ticketPage(tickets, { job: null, schedule: null, revision: null, standard: "BS8666:2005" });
    });
    return {
      figures: {
        tickets: tickets.length,
        "with a working order": tickets.filter(({ order }) => order.kind === "found").length,
        "read, fitted, ordered and marked, ms": Math.round(make),
        "drawn and printed to HTML, ms": Math.round(print),
        "page, kB": Math.round(page.length / 1024),
      },
    };
  },
};

export default bench;

function once(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
