import { describe, expect, test } from "vitest";
import type { AuditView, FindingView } from "../../../../addin/pane/desk/audit-view";
import { summaryLine } from "../../../../addin/pane/parts/summary-line";

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
  silenceKey: null,
  before: [],
  guess: null,
});

const view: AuditView = {
  sheet: "Bars",
  standard: { id: "BS8666:2005", title: "" },
  findings: [],
  otherSheets: [],
  rows: { bars: 117, headings: 1, totals: 1, notes: 2, blank: 1, unread: 0 },
  header: 4,
  columns: [],
  unread: [],
  decisions: { rulesOff: [], limits: [], silences: [], corrections: [], confirmed: [], problem: null },
  noHeader: null,
  flags: [],
  mass: 34_580,
  massAffected: 754.6,
  barsWithoutMass: 0,
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
      "Bars, BS8666:2005: 117 bar rows checked; 1 row unsafe; 1 row unbendable; 0.75 t of 34.58 t affected.",
    );
  });

  test("should not keep back what it could not reckon or read", () => {
    const line = summaryLine({ ...view, barsWithoutMass: 3, rows: { ...view.rows, unread: 1 } });
    expect(line).toContain("3 rows without a mass");
    expect(line).toContain("1 row unread");
  });
});
