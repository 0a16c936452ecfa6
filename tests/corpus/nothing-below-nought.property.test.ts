import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runAudit } from "../../core/audit/run-audit";
import { rowsToCut } from "../../core/cutting/rows-to-cut";
import { type Cell, sheetFromRows } from "../../core/schedule/sheet";
import { Workshop } from "../../core/shop/workshop";
import { ticketsOfAudit } from "../../core/tickets/tickets-of-audit";
import { reckonTonnage } from "../../core/totals/reckon-tonnage";
import { CORPUS } from "./corpus";
import { standardOf } from "./corpus-findings";
import { cellsOf } from "./corpus-schedule";

const ROWS = 8;
const SCHEDULES = CORPUS.map((schedule) => ({
  name: schedule.name,
  standard: standardOf(schedule.standard),
  rows: cellsOf(schedule).slice(0, schedule.title.length + ROWS),
}));

/** What a slip of the hand, a wrong paste or a broken export leaves in a cell. */
const slip = fc.oneof(
  fc.constantFrom<Cell>(
    0,
    -1,
    -450,
    1e308,
    -1e308,
    5e-324,
    "0",
    "-0",
    "-450 mm",
    "9".repeat(309),
    "1e309",
    "12",
    "21",
    "44",
    "51",
  ),
  fc.integer({ min: -5000, max: 20_000 }),
  fc.integer({ min: 1, max: 40 }).map((factor) => factor * 1000),
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
);
const mutation = fc.record({ row: fc.nat(ROWS * 3), column: fc.nat(24), to: slip });

describe("no length, mass, count or fix", () => {
  it.each([11, 12, 13, 14, 15])(
    "should be nought, below it or infinite in 1,000 schedules of seed %i",
    (seed) => {
      let outOfTotal = 0;
      fc.assert(
        fc.property(
          fc.nat(SCHEDULES.length - 1),
          fc.array(mutation, { minLength: 1, maxLength: 6 }),
          (place, slips) => {
            const { rows, standard } = SCHEDULES[place]!;
            const cells = rows.map((row) => [...row]);
            for (const { row, column, to } of slips) {
              const line = cells[row % cells.length]!;
              line[column % Math.max(1, line.length)] = to;
            }
            const sheet = sheetFromRows("Schedule", cells);
            const report = runAudit({ sheets: [sheet], standard });
            const { reading } = report.sheets[0]!;
            const { tonnage, masses, notInTotal } = reckonTonnage([{ sheet, reading }], standard);
            outOfTotal += notInTotal.length;
            for (const row of masses[0] ?? []) {
              if (row !== null) allAbove(row.mass, row.cutLength, row.count);
            }
            expect(notInTotal.every(({ why, cell }) => why !== "" && /^[A-Z]+\d+$/.test(cell))).toBe(true);
            if (tonnage.rows > 0) allAbove(tonnage.total, ...tonnage.bySize.values());
            for (const { fix } of report.findings) {
              for (const { to } of fix?.edits ?? []) if (typeof to === "number") allAbove(to);
            }
            for (const { length, count } of rowsToCut(sheet, reading, standard).rows) allAbove(length, count);
            const { tickets } = ticketsOfAudit(report, [sheet], new Workshop(null, standard));
            for (const { cut, massEach, massTotal, count, bends } of tickets) {
              // none is what the cell says
              if (count !== 0) allAbove(count);
              allAbove(cut?.length, massEach, massTotal, ...bends.map(({ former }) => former));
            }
          },
        ),
        { numRuns: 1000, seed },
      );
      expect(outOfTotal).toBeGreaterThan(100);
    },
  );
});

function allAbove(...numbers: readonly (number | null | undefined)[]): void {
  for (const number of numbers) {
    if (number === null || number === undefined) continue;
    if (!(number > 0 && Number.isFinite(number))) expect.fail(`${number} is given as a result`);
  }
}
