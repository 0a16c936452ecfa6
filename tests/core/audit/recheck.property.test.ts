import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AuditReport } from "../../../core/audit/audit-report";
import type { AuditSettings } from "../../../core/audit/audit-settings";
import { exampleColumns, exampleSheets, HEADERS } from "../../../core/audit/example-sheet";
import { exampleShop } from "../../../core/audit/example-shop";
import type { Example } from "../../../core/audit/rule";
import { RULES } from "../../../core/audit/rules/index";
import { openAudit, recheck, runAudit } from "../../../core/audit/run-audit";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import type { Standard } from "../../../core/standards/port";
import { CORPUS } from "../../corpus/corpus";
import { standardOf } from "../../corpus/corpus-findings";
import { cellsOf } from "../../corpus/corpus-schedule";
import { settingsOf, standardNamed } from "./rule-cases";

/** What is typed over a cell, or pasted over it out of another row of the same column. */
const typed = fc.oneof<fc.Arbitrary<Cell | { readonly fromRow: number }>[]>(
  fc.constantFrom<Cell>(null, "", 0, -450, "x", "H16", "11", "00", "21", "B", "do", "99", { error: "#REF!" }),
  fc.constantFrom<Cell>("1250", "superseded", "500 +90 400", "TOTAL", "M00002", "07", 64),
  fc.integer({ min: 1, max: 12_000 }),
  fc.double({ min: 0.01, max: 900, noNaN: true }),
  fc.record({ fromRow: fc.nat(400) }),
);

/** A block of a few rows in one column, and whether the edit is taken back again. */
const edit = fc.record({
  sheet: fc.nat(5),
  row: fc.nat(400),
  rows: fc.integer({ min: 1, max: 3 }),
  column: fc.nat(20),
  to: typed,
  undone: fc.boolean(),
});

type Rows = readonly (readonly Cell[])[];
type Edit = typeof edit extends fc.Arbitrary<infer Value> ? Value : never;

/** Everything that a surface shows of a report. */
function shown({ findings, byRow, rows, waivers, outdatedWaivers }: AuditReport) {
  return { findings, byRow, rows, waivers, outdatedWaivers };
}

function withEdit(
  rows: Rows,
  { row, rows: many, column, to }: Edit,
): { rows: Rows; first: number; last: number } {
  const first = row % rows.length;
  const last = Math.min(first + many - 1, rows.length - 1);
  const edited = rows.map((cells, at) => {
    if (at < first || at > last || cells.length === 0) return cells;
    const place = column % cells.length;
    const cell =
      typeof to === "object" && to !== null && "fromRow" in to
        ? (rows[to.fromRow % rows.length]?.[place] ?? null)
        : to;
    return cells.map((old, other) => (other === place ? cell : old));
  });
  return { rows: edited, first, last };
}

interface Book {
  readonly standard: Standard;
  readonly settings?: AuditSettings;
  readonly schedules: readonly { readonly name: string; readonly rows: Rows }[];
  /** sheets that are not edited */
  readonly beside: readonly Sheet[];
}

/**
 * Edits one after another, each re-checked, against a whole check of what then stands there. Answers the names of
 * the rules that spoke.
 */
function holds({ schedules, beside, ...asked }: Book, edits: readonly Edit[]): ReadonlySet<string> {
  const now = [...schedules];
  const sheets = (): Sheet[] => [...now.map(({ name, rows }) => sheetFromRows(name, rows)), ...beside];
  const whole = (): AuditReport => runAudit({ ...asked, sheets: sheets() });
  let audit = openAudit({ ...asked, sheets: sheets() });
  const spoke = new Set(audit.report.byRow.map(({ name }) => name));
  for (const one of edits) {
    const at = one.sheet % now.length;
    const before = now[at] as Book["schedules"][number];
    const { name } = before;
    const { rows, first, last } = withEdit(before.rows, one);
    const after = recheck(audit, sheetFromRows(name, rows), first, last);
    // an edit that is only tried leaves the report that it was tried on as it was
    const isKept = !one.undone;
    now[at] = { name, rows };
    if (!isKept) {
      expect(shown(after.report)).toEqual(shown(whole()));
      now[at] = before;
      audit = recheck(audit, sheetFromRows(name, before.rows), first, last);
    } else audit = after;
    for (const { name: rule } of after.report.byRow) spoke.add(rule);
  }
  expect(shown(audit.report)).toEqual(shown(whole()));
  return spoke;
}

function named(corpus: readonly (typeof CORPUS)[number][]): Book["schedules"] {
  return corpus.map((one, at) => ({ name: `Sheet ${at}`, rows: cellsOf(one) }));
}

/** Rows enough above an example's for an edit of it to be read in place. */
const ROWS_ABOVE = 45;

/** The sheets of an example as they stand, or each under rows that nothing is wrong with. */
function bookOf(example: Example, isDeep: boolean): Book {
  const sheets = exampleSheets(example);
  const names = new Set(Object.keys(example.sheets ?? { Schedule: [] }));
  const columns = exampleColumns(
    [...Object.values(example.sheets ?? {}), example.rows ?? [], example.foot ?? []].flat(),
  );
  const above = Array.from({ length: isDeep ? ROWS_ABOVE : 0 }, (_, at) => {
    const length = 1000 + 25 * at;
    const sound = {
      ...{ member: "Above", mark: `Z${100 + at}`, size: "H16", members: 1, each: 2, total: 2 },
      ...{ length, shape: "00", A: length, totalLength: (2 * length) / 1000 },
    };
    return columns.map((column): Cell => (column in sound ? sound[column as keyof typeof sound] : null));
  });
  const schedules = sheets
    .filter(({ name }) => names.has(name))
    .map((sheet) => {
      const [header = [], ...rows] = rowsOf(sheet);
      const placeOf = columns.map((column) => header.indexOf(HEADERS[column]));
      const filled = above.map((row) =>
        header.map((_, place) => (placeOf.includes(place) ? (row[placeOf.indexOf(place)] ?? null) : null)),
      );
      return { name: sheet.name, rows: [header, ...filled, ...rows] };
    });
  const settings = settingsOf(example);
  const standard = standardNamed(example.standard);
  return { standard, settings, schedules, beside: sheets.filter(({ name }) => !names.has(name)) };
}

function rowsOf(sheet: Sheet): Rows {
  return Array.from({ length: sheet.rowCount }, (_row, row) =>
    Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column)),
  );
}

describe("recheck", () => {
  const edits = fc.array(edit, { minLength: 1, maxLength: 6 });
  const schedule = fc.constantFrom(...CORPUS);

  it("should find what a whole check finds after any edits of a schedule", () => {
    fc.assert(
      fc.property(schedule, edits, (one, all) => {
        holds({ standard: standardOf(one.standard), schedules: named([one]), beside: [] }, all);
      }),
      { numRuns: 50 },
    );
  });

  it("should find it in a book of several schedules with a Shop sheet", () => {
    const shop = sheetFromRows("Shop", exampleShop({ limits: { temperature: -7, hoist: 400 } }));
    fc.assert(
      fc.property(schedule, schedule, edits, (one, other, all) => {
        const schedules = named([one, other, one]);
        holds({ standard: standardOf(one.standard), schedules, beside: [shop] }, all);
      }),
      { numRuns: 10 },
    );
  });

  it("should find it in the examples of every rule, as they stand and under many sound rows", () => {
    const spoke = new Set<string>();
    for (const example of RULES.flatMap(({ docs }) => docs.failing)) {
      for (const book of [bookOf(example, false), bookOf(example, true)]) {
        const last = fc.nat({ max: (example.rows ?? []).length + 1 });
        const nearEnd = fc.array(
          fc.tuple(edit, last).map(([one, fromEnd]) => {
            const length = book.schedules[one.sheet % book.schedules.length]?.rows.length ?? 0;
            return { ...one, row: Math.max(0, length - 1 - fromEnd) };
          }),
          { minLength: 2, maxLength: 4 },
        );
        const property = fc.property(nearEnd, (all) => {
          for (const name of holds(book, all)) spoke.add(name);
        });
        fc.assert(property, { numRuns: 1 });
      }
    }
    const silent = RULES.filter(({ name, docs }) => docs.failing.length > 0 && !spoke.has(name));
    expect(silent.map(({ name }) => name)).toEqual([]);
  });
});
