import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import { openSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { seededSchedule } from "../../bench/seeded-schedule";
import { standardNamed } from "../shapes/resolved";

const standard = standardNamed("BS8666:2005");
const ROWS = 60;
const { matrix } = seededSchedule(ROWS);

/** Forms in which rows lean on one another: the member written once, ditto marks, headings, totals, notes. */
const FORMS: readonly (readonly (readonly Cell[])[])[] = [
  matrix,
  matrix.map((row) => row.slice(1)),
  matrix.map((row, at) => (at > 1 && at % 7 !== 0 ? [null, ...row.slice(1)] : row)),
  matrix.map((row, at) =>
    at > 1 && at % 5 === 0 ? row.map((cell, place) => (place === 2 ? '"' : cell)) : row,
  ),
  matrix.map((row, at) =>
    at > 1 && at % 4 === 0 ? row.map((cell, place) => (place === 3 ? null : cell)) : row,
  ),
  matrix.flatMap((row, at) =>
    at > 0 && at % 9 === 0 ? [row, ["Total", null, null, null, null, 40], [`Beam ${at} - 3 nos`]] : [row],
  ),
  matrix.flatMap((row, at) => (at > 0 && at % 11 === 0 ? [row, [null, "bend on site"]] : [row])),
];

const cell = fc.oneof<fc.Arbitrary<Cell>[]>(
  fc.constant(null),
  fc.integer({ min: 0, max: 3000 }),
  fc.double({ min: 0.1, max: 9, noNaN: true }),
  fc.constantFrom<Cell>(
    "H20",
    "21",
    "99",
    "B500B",
    "M00002",
    "07",
    "x",
    "B",
    '"',
    "ditto",
    "as 05",
    "12a",
    "6/8",
    "Total",
  ),
);
const change = fc.record({
  form: fc.constantFrom(...FORMS),
  edits: fc.array(
    fc.record({
      row: fc.integer({ min: 0, max: ROWS }),
      column: fc.integer({ min: 0, max: 18 }),
      to: cell,
      span: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
});

/** Everything but which table object a bar points at. */
function told({ bars, totals, ...reading }: ScheduleReading) {
  const tableOf = reading.tables[0];
  return {
    ...reading,
    bars: bars.map(({ table, ...bar }) => ({ ...bar, headerTop: table.headerTop })),
    totals: totals.map(({ table, ...line }) => ({ ...line, headerTop: table?.headerTop })),
    columns: tableOf === undefined ? [] : [...tableOf.columns.values()],
  };
}

describe("ScheduleSession", () => {
  it("should read what a whole reading of the changed sheet reads, or decline", () => {
    let reread = 0;
    fc.assert(
      fc.property(change, ({ form, edits }) => {
        let rows: readonly (readonly Cell[])[] = form;
        let session = openSchedule(sheetFromRows("B1", rows), standard);
        for (const { row, column, to, span } of edits) {
          const last = Math.min(row + span, rows.length) - 1;
          rows = rows.map((old, at) => {
            if (at < row || at > last) return old;
            return Array.from({ length: 19 }, (_, place) => (place === column ? to : (old[place] ?? null)));
          });
          const sheet = sheetFromRows("B1", rows);
          const whole = openSchedule(sheet, standard);
          const some = session.reread(sheet, row, last);
          if (some !== null) {
            reread += 1;
            expect(told(some.reading)).toEqual(told(whole.reading));
          }
          session = some ?? whole;
        }
      }),
      { numRuns: 150, seed: 11 },
    );
    expect(reread).toBeGreaterThan(30);
  });

  it("should decline where another row goes by the changed one", () => {
    const session = openSchedule(sheetFromRows("S", matrix), standard);
    const withCell = (row: number, column: number, to: Cell) =>
      sheetFromRows(
        "S",
        matrix.map((old, at) => (at === row ? old.map((one, place) => (place === column ? to : one)) : old)),
      );
    expect(session.reread(withCell(20, 8, 777), 20, 20)?.reading.bars[19]?.dims[0]).toBe(777);
    expect(session.reread(withCell(20, 1, "99"), 20, 20)).toBeNull();
    expect(session.reread(withCell(20, 0, "Other"), 20, 20)).toBeNull();
    expect(session.reread(withCell(0, 8, "Mark"), 0, 0)).toBeNull();
  });
});
