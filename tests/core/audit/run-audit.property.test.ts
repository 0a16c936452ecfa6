import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import type { Cell } from "../../../core/schedule/sheet";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { CORPUS } from "../../corpus/corpus";
import { standardOf } from "../../corpus/corpus-findings";
import { cellsOf } from "../../corpus/corpus-schedule";

const STANDARDS = [
  "BS8666:2005",
  "ACI318:2019",
  "AS3600:2018",
  "INDIA-SITE",
  "BS8666:2005+AS3600:2018",
  "ISO3766:2003",
];
const HEADER: Cell[] = [
  "Member",
  "Bar mark",
  "Type and size",
  "No. of mbrs",
  "No. in each",
  "Total no.",
  "Length of each bar",
  "Shape code",
  "A",
  "B",
  "C",
  "D",
  "E/R",
  "Rev letter",
  "Grade",
  "Former mm",
  "Coating",
  "Spacing mm",
  "Mass kg",
  "Remarks",
];

/** What people, and what machines, leave in a cell. */
const anyCell: fc.Arbitrary<Cell> = fc.oneof(
  among(
    1200,
    null,
    "",
    " ",
    0,
    -0,
    -450,
    1e308,
    5e-324,
    true,
    false,
    "(450)",
    "3'-4 1/2\"",
    "1200-1800 step 50",
    "1800-1200 step 0",
    "12000+2350 (lap)",
    "R=0",
    "H16",
    "#5",
    "T1O",
    "500 +90 400",
    "500 +180r0 0 -90 (400)",
    "hook135 0 +90 1 hook180",
    "99",
    "51",
    "77",
    "as above",
    "same as 1",
    "do",
    "EF",
    "span 6000 cover 40",
    "300x600 cover 40",
    "over 0",
    "pile length 0",
    "1/0",
    "１２５０",
    "१२५०",
    "TOTAL",
    "superseded",
  ),
  among(50, { error: "#REF!" }),
  { weight: 300, arbitrary: fc.integer({ min: -20_000, max: 20_000 }) },
  { weight: 200, arbitrary: fc.double({ min: -1e6, max: 1e6, noNaN: true }) },
  // no file holds these, but a host may hand them over; rare, since what is typed may be quoted
  among(1, NaN, Infinity, -Infinity, "NaN"),
  { weight: 200, arbitrary: fc.string({ maxLength: 12 }) },
  { weight: 50, arbitrary: fc.string({ unit: "binary", maxLength: 8 }) },
);

function among(weight: number, ...cells: Cell[]): { weight: number; arbitrary: fc.Arbitrary<Cell> } {
  return { weight, arbitrary: fc.constantFrom(...cells) };
}

/** A place in a schedule and what is written there. */
const edit = fc.record({
  row: fc.nat(60),
  column: fc.nat(19),
  to: anyCell,
});

describe("runAudit", () => {
  it("should throw for none of 200,000 cells and write no NaN, whatever stands under the form's header", () => {
    const rows = fc.array(fc.array(anyCell, { minLength: HEADER.length, maxLength: HEADER.length }), {
      minLength: 1,
      maxLength: 30,
    });
    fc.assert(
      fc.property(fc.constantFrom(...STANDARDS), rows, (standard, cells) => {
        holds(standard, [HEADER, ...cells]);
      }),
      { numRuns: 700 },
    );
  });

  it("should throw for no edit of a corpus schedule and write no NaN", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CORPUS),
        fc.array(edit, { minLength: 1, maxLength: 40 }),
        (schedule, edits) => {
          const rows = cellsOf(schedule).map((row) => [...row]);
          for (const { row, column, to } of edits) {
            const cells = rows[row % rows.length];
            if (cells !== undefined && cells.length > 0) cells[column % cells.length] = to;
          }
          holds(schedule.standard, rows);
        },
      ),
      { numRuns: 100 },
    );
  });
});

function holds(standard: string, rows: readonly (readonly Cell[])[]): void {
  const report = runAudit({ sheets: [sheetFromRows("Schedule", rows)], standard: standardOf(standard) });
  const { bars, headings, totals, notes, blank, unread } = report.rows;
  expect(bars + headings + totals + notes + blank + unread).toBe(rows.length);
  // what was typed may be quoted
  const isTyped = rows.flat().some((cell) => /nan|infinity|undefined|\{/i.test(String(cell)));
  for (const { code, message, fix, cell, row } of report.findings) {
    const words = `${code}: ${message} ${fix?.label ?? ""}`;
    if (!isTyped) expect(words).not.toMatch(/\bNaN\b|Infinity|undefined|\{\w+\}/);
    for (const { to } of fix?.edits ?? []) {
      if (typeof to === "number") expect(Number.isFinite(to), `${cell} ${words}`).toBe(true);
    }
    if (row !== null) expect(row).toBeLessThanOrEqual(rows.length);
  }
}
