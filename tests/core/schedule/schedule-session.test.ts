import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import { openSchedule } from "../../../core/schedule/read-schedule";
import { plainBar } from "../../../core/schedule/rows/stored-bar";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import type { Standard } from "../../../core/standards/port";
import { seededSchedule } from "../../bench/seeded-schedule";
import { CORPUS } from "../../corpus/corpus";
import { standardOf } from "../../corpus/corpus-findings";
import { cellsOf } from "../../corpus/corpus-schedule";
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
  // marks that come again in a later revision, and sets
  matrix.map((row, at) =>
    at === 0
      ? row
      : row.map((cell, place) =>
          place === 1 ? ["07", "12a", "12b", "08"][at % 4] : place === 13 ? "ABC"[at % 3] : cell,
        ),
  ) as Cell[][],
  // a note gives the grade of bars that name none
  [
    ["All bars grade B500C"],
    ...matrix.map((row, at) =>
      row.map((cell, place) =>
        at === 0 ? cell : place === 2 ? 16 : place === 14 && at % 3 > 0 ? null : cell,
      ),
    ),
  ],
  // the title names the member of all bars
  [
    ["Member: Pier 7", null, null, null, "Pour: P4"],
    ...matrix.map((row) => row.map((cell, place) => (place === 0 || place === 17 ? null : cell))),
  ],
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
    "superseded",
    "C",
    "12c",
  ),
);
const change = fc.record({
  form: fc.constantFrom(...FORMS),
  edits: fc.array(
    fc.record({
      row: fc.oneof(fc.integer({ min: 0, max: ROWS }), fc.integer({ min: 0, max: 7 })),
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
    bars: bars.map(plainBar).map(({ table, ...bar }) => ({ ...bar, headerTop: table.headerTop })),
    totals: totals.map(({ table, ...line }) => ({ ...line, headerTop: table?.headerTop })),
    columns: tableOf === undefined ? [] : [...tableOf.columns.values()],
  };
}

type Rows = readonly (readonly Cell[])[];
interface Edit {
  readonly row: number;
  readonly column: number;
  readonly to: Cell;
  readonly span: number;
}

/** Edits one after another; answers how many were read in place, each held against a whole reading. */
function readsInPlace(name: string, of: Standard, form: Rows, edits: readonly Edit[]): number {
  let rows = form;
  let inPlace = 0;
  let session = openSchedule(sheetFromRows(name, rows), of);
  const columns = Math.max(...form.map(({ length }) => length));
  for (const { row, column, to, span } of edits) {
    const last = Math.min(row + span, rows.length) - 1;
    rows = rows.map((old, at) => {
      if (at < row || at > last) return old;
      return Array.from({ length: columns }, (_, place) => (place === column ? to : (old[place] ?? null)));
    });
    const sheet = sheetFromRows(name, rows);
    const whole = openSchedule(sheet, of);
    const some = session.reread(sheet, row, last);
    if (some !== null) {
      inPlace += 1;
      expect(told(some.reading)).toEqual(told(whole.reading));
      const differ = some.reading.bars.flatMap((bar, at) => (bar === session.reading.bars[at] ? [] : [at]));
      expect(some.readAgain).toEqual(differ);
    }
    session = some ?? whole;
  }
  return inPlace;
}

describe("ScheduleSession", () => {
  it("should read what a whole reading of the changed sheet reads, or decline", () => {
    let inPlace = 0;
    fc.assert(
      fc.property(change, ({ form, edits }) => {
        inPlace += readsInPlace("B1", standard, form, edits);
      }),
      { numRuns: 150, seed: 11 },
    );
    expect(inPlace).toBeGreaterThan(60);
  });

  it("should do so in every schedule of the corpus, wherever it is edited", () => {
    let inPlace = 0;
    for (const [at, one] of CORPUS.entries()) {
      const rows = cellsOf(one);
      const columns = Math.max(...rows.map(({ length }) => length));
      const place = fc.record({
        row: fc.nat(rows.length - 1),
        column: fc.nat(columns - 1),
        to: cell,
        fromRow: fc.nat(rows.length - 1),
        isPasted: fc.boolean(),
        span: fc.constantFrom(1, 1, 2),
      });
      const edits = fc.array(place, { minLength: 4, maxLength: 4 }).map((all) =>
        // half of what is typed stands in another row of the same column
        all.map((edit) =>
          edit.isPasted ? { ...edit, to: rows[edit.fromRow]?.[edit.column] ?? null } : edit,
        ),
      );
      fc.assert(
        fc.property(edits, (all) => {
          inPlace += readsInPlace(`Sheet ${at}`, standardOf(one.standard), rows, all);
        }),
        { numRuns: 2, seed: at },
      );
    }
    expect(inPlace).toBeGreaterThan(60);
  });

  it("should read in place an edit of every kind of cell that a row has", () => {
    const texts: readonly Cell[] = ["Other", "99", "H25", 3, 5, 15, 4000, "11", 777, 350, 400, 450, 500, "B"];
    const to: readonly Cell[] = [...texts, "B500C", 100, 44.5, "P9", "seen"];
    for (const [column, typed] of to.entries())
      expect(
        readsInPlace("S", standard, matrix, [{ row: 20, column, to: typed, span: 1 }]),
        `column ${column}`,
      ).toBe(1);
  });

  it("should say which other bars read otherwise: what a row carries down, and what gives way to it", () => {
    const once = matrix.map((row, at) => (at > 1 && at % 7 !== 0 ? [null, ...row.slice(1)] : row));
    const session = openSchedule(sheetFromRows("S", once), standard);
    const renamed = once.map((row, at) => (at === 14 ? ["Other", ...row.slice(1)] : row));
    const after = session.reread(sheetFromRows("S", renamed), 14, 14);
    expect(after?.readAgain).toEqual([13, 14, 15, 16, 17, 18, 19]);
    expect(after?.reading.bars[19]?.member).toBe("Other");
    expect(after?.reading.bars[20]?.member).toBe(session.reading.bars[20]?.member);
    const again = matrix.map((row, at) =>
      at === 30 ? row.map((one, place) => (place === 1 ? "03" : place === 13 ? "B" : one)) : row,
    );
    const later = openSchedule(sheetFromRows("S", matrix), standard).reread(
      sheetFromRows("S", again),
      30,
      30,
    );
    // both are of member M00002, whose marks 01 to 25 stand in rows 26 to 50
    expect(later?.readAgain).toEqual([27, 29]);
    expect(later?.reading.bars[27]).toMatchObject({ mark: "03", superseded: true });
  });

  it("should decline where a header, or what is no bar, changes", () => {
    const session = openSchedule(sheetFromRows("S", matrix), standard);
    const withCell = (row: number, column: number, to: Cell) =>
      sheetFromRows(
        "S",
        matrix.map((old, at) => (at === row ? old.map((one, place) => (place === column ? to : one)) : old)),
      );
    expect(session.reread(withCell(20, 8, 777), 20, 20)?.reading.bars[19]?.dims[0]).toBe(777);
    expect(session.reread(withCell(20, 2, "Total"), 20, 20)).toBeNull();
    expect(session.reread(withCell(0, 8, "Mark"), 0, 0)).toBeNull();
  });

  it("should keep nothing for an edit where none follows", () => {
    const sheet = sheetFromRows("S", matrix);
    const once = openSchedule(sheet, standard, undefined, true);
    expect(once.reread(sheet, 20, 20)).toBeNull();
    expect(told(once.reading)).toEqual(told(openSchedule(sheet, standard).reading));
  });
});

describe("an edit under a head whose word the cells help to read", () => {
  const head: Cell[] = ["No.", "Bar mark", "Size", "Nos", "Length (mm)"];
  const rows = Array.from({ length: 14 }, (_, at): Cell[] => [at + 1, `B${at + 1}`, "H16", 5, 1000]);
  const numbered = [head, ...rows];
  // the same column no longer numbers the rows
  const changed = numbered.map((row, at) => (at > 4 && at < 11 ? [40, ...row.slice(1)] : row));

  it("should be read as the whole sheet would be, or be declined", () => {
    const whole = openSchedule(sheetFromRows("S", changed), standard).reading;
    const after = openSchedule(sheetFromRows("S", numbered), standard).reread(
      sheetFromRows("S", changed),
      5,
      10,
    );
    expect([...(after?.reading ?? whole).tables].map(({ columns }) => [...columns.keys()])).toEqual(
      whole.tables.map(({ columns }) => [...columns.keys()]),
    );
    expect((after?.reading ?? whole).bars.map(({ total }) => total)).toEqual(
      whole.bars.map(({ total }) => total),
    );
  });

  it("should take a total that rises by one for a total", () => {
    const totals = [
      ["Mark", "Size", "No. of mbrs", "No. in each", "Total no.", "Length (mm)"],
      ...[10, 11, 12, 13, 14].map((count, at): Cell[] => [`B${at}`, "H16", 1, count, count, 1000]),
    ];
    const { bars } = openSchedule(sheetFromRows("S", totals), standard).reading;
    expect(bars.map(({ total }) => total)).toEqual([10, 11, 12, 13, 14]);
  });
});
