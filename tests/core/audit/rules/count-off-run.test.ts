import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/count-off-run";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";
import { ruleCases } from "../rule-cases";

ruleCases(rule, {
  silent: [{ rows: [{ size: "H10", shape: "00", A: 2000, length: 2000, spacing: 150 }] }],
  speaks: [],
});

const HEADER = [
  "Bar mark",
  "Type and size",
  "Total no.",
  "Length of each bar mm",
  "Shape code",
  "A",
  "Laid along",
  "Spacing mm",
];
const RUNS = [3000, 4100, 2500, 6000, 5200, 3350, 4400];

/** count by the office's own way of rounding, over the column "Laid along" */
function said(counted: (gaps: number, index: number) => number): string[] {
  const rows: Cell[][] = [[...HEADER]];
  RUNS.forEach((run, index) => {
    const spacing = [150, 200][index % 2] ?? 150;
    rows.push([String(index + 1), "H10", counted(run / spacing, index), 2000, "00", 2000, run, spacing]);
  });
  const standard = resolveStandard("BS8666:2005") as Standard;
  const report = runAudit({ sheets: [sheetFromRows("Schedule", rows)], standard, rules: [rule] });
  // how many bars stand at a spacing the designer decides
  expect(report.findings.filter(({ fix }) => fix !== null)).toEqual([]);
  return report.findings.map(({ cell, message }) => `${cell}: ${message}`);
}

describe("counts over a run", () => {
  it("should be silent on whichever way an office rounds", () => {
    expect(said((gaps) => Math.floor(gaps) + 1)).toEqual([]);
    expect(said((gaps) => Math.ceil(gaps))).toEqual([]);
  });

  it("should name the row that leaves the way of the others", () => {
    // 2500 over 150 is 16.7 gaps: 17 bars by this office
    expect(said((gaps, index) => (index === 2 ? 19 : Math.floor(gaps) + 1))).toEqual([
      "C4: 19 bars at 150 over 2500 should be 17, as 6 of 7 rows count: ask the designer",
    ]);
  });

  it("should say nothing where the rows keep no way", () => {
    expect(said((_, index) => 5 + 3 * index)).toEqual([]);
  });
});
