import { describe, expect, test } from "vitest";
import type { AuditView, FindingView } from "../../../../addin/pane/engine/audit-view";
import { summaryLine } from "../../../../addin/pane/panels/check/summary-line";

const finding = (severity: FindingView["severity"], row: number | null): FindingView => ({
  key: `${severity} ${row}`,
  code: "BEND101",
  name: "former-too-small",
  severity,
  outcome: "broken",
  sheet: "Bars",
  row,
  cell: row === null ? null : `N${row}`,
  message: "",
  fix: null,
  cite: null,
  source: null,
  rule: "former too small",
  member: null,
  pour: null,
  mark: null,
  waiverKey: null,
  before: [],
  guess: null,
  ways: [],
});

const view: AuditView = {
  sheet: "Bars",
  isTurned: false,
  standard: { id: "BS8666:2005", title: "" },
  findings: [],
  otherSheets: [],
  rules: {},
  rows: { bars: 117, headings: 1, totals: 1, notes: 2, blank: 1, unread: 0 },
  header: 4,
  columns: [],
  unread: [],
  decisions: { rulesOff: [], limits: [], waivers: [], corrections: [], confirmed: [], problem: null },
  notTold: [],
  notToldLine: null,
  head: { job: null, schedule: null, drawing: "D-12", revision: "C", date: "2 March 2031" },
  noHeader: null,
  flags: [],
  mass: 34_580,
  massAffected: 754.6,
  held: null,
  notInTotal: [],
};

describe("summaryLine", () => {
  test("should count rows, not findings: two on one row are one row unsafe", () => {
    const findings = [
      finding("unsafe", 16),
      finding("unsafe", 16),
      finding("unbendable", 14),
      finding("note", null),
    ];
    expect(summaryLine({ ...view, findings })).toBe(
      "Bars, drawing D-12, revision C, dated 2 March 2031, BS8666:2005: 117 bar rows checked; rows 1 unsafe, 1 unbendable, 0 off-standard, 0 doubtful; 0.75 t of 34.58 t unsafe or unbendable.",
    );
  });

  test("should tell of every severity, of what is not sure, and of what is not told", () => {
    const unsure = { ...finding("unsafe", 9), outcome: "unsure" as const };
    const findings = [unsure, finding("off-standard", 3), finding("doubtful", 4), finding("doubtful", 5)];
    const notToldLine = "not told of 12 bars (12 unsafe) by 12 waivers";
    const head = { job: null, schedule: null, drawing: null, revision: null, date: null };
    expect(summaryLine({ ...view, findings, notToldLine, head })).toBe(
      "Bars, no revision stated, BS8666:2005: 117 bar rows checked; rows 0 unsafe, 1 perhaps unsafe, 0 unbendable, 1 off-standard, 2 doubtful; 0.75 t of 34.58 t unsafe or unbendable; not told of 12 bars (12 unsafe) by 12 waivers.",
    );
  });

  test("should not keep back what it could not reckon or read", () => {
    const line = summaryLine({
      ...view,
      notInTotal: [1, 2, 3].map((row) => ({ sheet: "S", row, cell: `A${row}`, why: "no count" })),
      rows: { ...view.rows, unread: 1 },
    });
    expect(line).toContain("3 rows not in the total");
    expect(line).toContain("1 row unread");
  });
});
