import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { Workshop } from "../../../core/shop/workshop";
import { bundleItem } from "../../../core/tickets/bundle-item";
import { isAsked, isHold } from "../../../core/tickets/ticket";
import { rowsToSend, ticketsOfAudit } from "../../../core/tickets/tickets-of-audit";
import { CORPUS } from "../../corpus/corpus";
import { standardOf } from "../../corpus/corpus-findings";
import { sheetOf } from "../../corpus/corpus-schedule";

describe("rowsToSend", () => {
  it("should bundle the bars of every schedule of the corpus as their tickets do, and hold the same back", () => {
    let held = 0;
    let bundled = 0;
    for (const schedule of CORPUS) {
      const [sheet, standard] = [sheetOf(schedule), standardOf(schedule.standard)];
      const report = runAudit({ sheets: [sheet], standard });
      const workshop = new Workshop(null, standard);
      const made = ticketsOfAudit(report, [sheet], workshop);
      const sent = rowsToSend(report, [sheet], workshop);
      expect(sent.dropped, schedule.name).toEqual(made.dropped);
      expect(sent.tickets.map(bundleItem), schedule.name).toEqual(made.tickets.map(bundleItem));
      const holds = made.tickets.map(({ warnings }) => warnings.filter((one) => isHold(one) || isAsked(one)));
      expect(
        sent.tickets.map(({ warnings }) => warnings),
        schedule.name,
      ).toEqual(holds);
      held += holds.filter(({ length }) => length > 0).length;
      bundled += sent.tickets.filter((row) => bundleItem(row) !== null).length;
    }
    // the corpus holds both
    expect(held).toBeGreaterThan(2);
    expect(bundled).toBeGreaterThan(600);
  });
});
