import { describe, expect, it } from "vitest";
import type { Finding } from "../../core/audit/finding";
import { RULES } from "../../core/audit/rules";
import { runAudit } from "../../core/audit/run-audit";
import { MARKS } from "../../core/formulas/marks";
import type { Sheet } from "../../core/schedule/sheet";
import { Workshop } from "../../core/shop/workshop";
import type { Standard } from "../../core/standards/port";
import type { Ticket } from "../../core/tickets/ticket";
import { ticketsOfAudit } from "../../core/tickets/tickets-of-audit";
import { CORPUS } from "./corpus";
import { standardOf } from "./corpus-findings";
import { type CorpusSchedule, sheetOf } from "./corpus-schedule";
import { SHOP_SHEETS } from "./shop-sheets";

/** Rules that speak against the benders of the yard; a larger former of the rack is only doubtful. */
const AGAINST = RULES.filter(({ code }) => /^MACHINE10[1-8]$/.test(code));
const COMPENSATED = 7;

describe("one machine a row", () => {
  it.each(Object.entries(SHOP_SHEETS))(
    "audit and ticket are of one mind about the benders of a yard %s",
    (_, shop) => {
      let rows = 0;
      for (const schedule of CORPUS) {
        const { tickets, findings } = onShop(schedule, shop);
        for (const ticket of tickets.filter(({ order }) => order.kind !== "no bends")) {
          rows += 1;
          const place = `${schedule.name} row ${ticket.row}`;
          const told = findings.filter(({ row }) => row === ticket.row);
          // another former than a bend's own width asks for is doubtful only: it may be made otherwise
          const never = told.filter(({ outcome }) => outcome === "broken");
          const { order, machine } = ticket;
          const isHeard = ({ severity }: Finding): boolean => severity !== "doubtful";
          if (machine.name !== null) expect(told.filter(isHeard), place).toEqual([]);
          if (order.kind !== "blocked") expect(never.filter(isHeard), place).toEqual([]);
          else if (order.sure) {
            expect(never.length, place).toBeGreaterThan(0);
            expect(never[0]?.message, place).toContain(order.machine);
          }
        }
      }
      expect(rows).toBeGreaterThan(1000);
    },
  );

  it("MARKS for the bender that a ticket names bends to the ticket's angles", () => {
    const shop = SHOP_SHEETS["two benders with trials"]!;
    let angles = 0;
    for (const schedule of CORPUS.filter(({ standard }) => standard.startsWith("BS8666"))) {
      const { tickets, standard, workshop } = onShop(schedule, shop);
      for (const ticket of tickets.filter(({ machine }) => machine.name !== null)) {
        const marks = marksOf(ticket, standard, workshop);
        for (const { bend, compensated } of ticket.bends) {
          const angle = marks[bend]?.[COMPENSATED] ?? null;
          const place = `${schedule.name} row ${ticket.row}`;
          if (compensated.angle === null) expect(angle, place).toBeNull();
          else expect(angle, place).toBeCloseTo(compensated.angle, 6);
          angles += compensated.angle === null ? 0 : 1;
        }
      }
    }
    expect(angles).toBeGreaterThan(20);
  });
});

function onShop(schedule: CorpusSchedule, shop: Sheet) {
  const standard = standardOf(schedule.standard);
  const sheet = sheetOf(schedule);
  const report = runAudit({ sheets: [sheet, shop], standard, rules: AGAINST });
  const workshop = new Workshop(shop, standard);
  const { tickets } = ticketsOfAudit(report, [sheet], workshop);
  return { tickets, findings: report.byRow, standard, workshop };
}

function marksOf(ticket: Ticket, standard: Standard, { shop }: Workshop) {
  const dims = ticket.dimensions.map(({ length }) => length);
  const former = ticket.formers[0]?.diameter ?? null;
  return MARKS.call(
    [
      [[ticket.shape]],
      [[ticket.size]],
      [dims],
      [[standard.id]],
      [[former]],
      [[ticket.grade.name]],
      shop.trials?.block,
      undefined,
      [[ticket.machine.name]],
    ],
    { defaultStandard: standard.id, machines: shop.benders },
  );
}
