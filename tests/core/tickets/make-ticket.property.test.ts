import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ticketPage } from "../../../addin/print/ticket-page";
import type { Cell } from "../../../core/schedule";
import { EMPTY_LOG, SHOP, ticketsOf } from "./ticket-sheets";

const length = fc.oneof(
  fc.integer({ min: 1, max: 12_000 }),
  fc.constant(null),
  fc.constant("?"),
  fc.constant(-40),
);
const size = fc.constantFrom("H8", "H12", "H16", "H20", "H40", "R10", "H17", "16", "#5", "", "bar");
const shape = fc.constantFrom(
  ...[
    "00",
    "01",
    "11",
    "12",
    "13",
    "15",
    "21",
    "25",
    "26",
    "31",
    "33",
    "41",
    "44",
    "46",
    "51",
    "63",
    "67",
    "75",
    "77",
    "98",
    "99",
  ],
  "500 +90 600 -45 300",
  "hook180 900 +90 400",
  "nonsense",
  null,
);
const row = fc
  .record({ size, shape, cut: length, dims: fc.array(length, { minLength: 0, maxLength: 5 }), count: length })
  .map(({ size: bar, shape: code, cut, dims, count }): Cell[] => [
    "B1",
    "01",
    bar,
    1,
    count,
    count,
    cut,
    code,
    ...dims,
  ]);

describe("makeTicket", () => {
  it("should make a ticket of every bar row and print it, whatever stands in its cells", () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), fc.boolean(), (rows, tried) => {
        const tickets = ticketsOf(rows, tried ? SHOP : EMPTY_LOG);
        const head = { job: null, schedule: null, revision: null, standard: "BS8666:2005" };
        const page = ticketPage(tickets, head);
        expect(page).not.toMatch(/NaN|undefined|\[object|Infinity/);
        expect(JSON.stringify(tickets)).not.toContain("NaN");
        for (const ticket of tickets) {
          for (const { compensated, start, end } of ticket.bends) {
            expect(end).toBeGreaterThanOrEqual(start);
            // an angle stands only with its interval, or not at all
            expect(compensated.angle === null).toBe(compensated.low === null);
            expect(compensated.angle === null).toBe(compensated.refusal !== null);
            if (!tried) expect(compensated.angle).toBeNull();
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it("should keep every mark on the bar, in the order of the path", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 200, max: 1500 }), { minLength: 2, maxLength: 5 }),
        fc.array(fc.constantFrom(45, -45, 90, -90, 135), { minLength: 4, maxLength: 4 }),
        (legs, turns) => {
          const path = legs
            .map((leg, index) =>
              index === 0 ? `${leg}` : `${turns[index - 1]! > 0 ? "+" : ""}${turns[index - 1]} ${leg}`,
            )
            .join(" ");
          const [ticket] = ticketsOf([["B1", "01", "H12", 1, 1, 1, null, path]]);
          const bends = [...(ticket?.bends ?? [])].sort((a, b) => a.bend - b.bend);
          expect(bends).toHaveLength(legs.length - 1);
          let before = 0;
          for (const { start, middle, end, fromHeld, fromSwinging } of bends) {
            expect(start).toBeGreaterThanOrEqual(before - 1e-6);
            expect(middle).toBeCloseTo((start + end) / 2, 6);
            expect(end).toBeLessThanOrEqual((ticket?.cut?.length ?? 0) + 1e-6);
            if (fromHeld.fromBend === null && fromSwinging.fromBend === null)
              expect(fromHeld.distance + fromSwinging.distance).toBeCloseTo(ticket?.cut?.length ?? 0, 6);
            before = end;
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
