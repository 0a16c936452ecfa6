import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AuditReport } from "../../../core/audit/audit-report";
import { exampleShop } from "../../../core/audit/example-shop";
import { recheck, runAudit } from "../../../core/audit/run-audit";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { CORPUS } from "../../corpus/corpus";
import { standardOf } from "../../corpus/corpus-findings";
import { cellsOf } from "../../corpus/corpus-schedule";

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

/** Edits one after another, each re-checked, against a whole check of what then stands there. */
function holds(
  standardId: string,
  books: readonly Rows[],
  beside: readonly Sheet[],
  edits: readonly Edit[],
): void {
  const standard = standardOf(standardId);
  const now = [...books];
  const sheets = (): Sheet[] => [...now.map((rows, at) => sheetFromRows(`Sheet ${at}`, rows)), ...beside];
  let report = runAudit({ sheets: sheets(), standard });
  for (const one of edits) {
    const at = one.sheet % now.length;
    const before = now[at] as Rows;
    const { rows, first, last } = withEdit(before, one);
    const name = `Sheet ${at}`;
    const after = recheck(report, sheetFromRows(name, rows), first, last);
    // an edit that is only tried leaves the report that it was tried on as it was
    const isKept = !one.undone;
    now[at] = rows;
    if (!isKept) {
      expect(shown(after)).toEqual(shown(runAudit({ sheets: sheets(), standard })));
      now[at] = before;
      report = recheck(report, sheetFromRows(name, before), first, last);
    } else report = after;
  }
  expect(shown(report)).toEqual(shown(runAudit({ sheets: sheets(), standard })));
}

describe("recheck", () => {
  const edits = fc.array(edit, { minLength: 1, maxLength: 6 });
  const schedule = fc.constantFrom(...CORPUS);

  it("should find what a whole check finds after any edits of a schedule", () => {
    fc.assert(
      fc.property(schedule, edits, (one, all) => holds(one.standard, [cellsOf(one)], [], all)),
      { numRuns: 50 },
    );
  });

  it("should find it in a book of several schedules with a Shop sheet", () => {
    const shop = sheetFromRows("Shop", exampleShop({ limits: { temperature: -7, hoist: 400 } }));
    fc.assert(
      fc.property(schedule, schedule, edits, (one, other, all) =>
        holds(one.standard, [cellsOf(one), cellsOf(other), cellsOf(one)], [shop], all),
      ),
      { numRuns: 10 },
    );
  });
});
