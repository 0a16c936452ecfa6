import { describe, expect, test } from "vitest";
import type { FindingView } from "../../../../addin/pane/engine/audit-view";
import { AS_CHECKED, arrangeFindings } from "../../../../addin/pane/model/arrange-findings";
import { findingsTable } from "../../../../addin/pane/model/findings-table";
import { SEVERITIES, type Severity } from "../../../../core/audit/finding";

const finding = (row: number | null, severity: Severity, more: Partial<FindingView> = {}): FindingView => ({
  key: `${row} ${severity}`,
  code: "SUM101",
  name: "total-differs",
  severity,
  outcome: "broken",
  sheet: "Bars",
  row,
  cell: row === null ? null : `E${row}`,
  message: "total 25 is not 24",
  fix: null,
  cite: null,
  source: null,
  rule: "total differs",
  member: "Beam 1",
  waiverKey: null,
  before: [],
  guess: null,
  ...more,
});

const FINDINGS = [
  finding(null, "note", { code: "READ104", rule: "facts not held", member: null, message: "no grade" }),
  finding(3, "doubtful"),
  finding(4, "unsafe", { member: "Wall 2", code: "BEND101", rule: "former too small" }),
  finding(5, "note", { member: "Wall 2" }),
  finding(6, "unsafe"),
];
const ALL = new Set(SEVERITIES);

const shape = (change: Partial<typeof AS_CHECKED>, shown: ReadonlySet<Severity> = ALL) =>
  arrangeFindings(FINDINGS, shown, { ...AS_CHECKED, ...change }).map(({ key, findings }) => [
    key,
    findings.map(({ row }) => row),
  ]);

describe("arrangeFindings", () => {
  test("should group by severity, the worst first, rows in order", () => {
    expect(shape({})).toEqual([
      ["unsafe", [4, 6]],
      ["doubtful", [3]],
      ["note", [null, 5]],
    ]);
  });

  test("should group by rule, that with the worst finding first, sorted by row or severity", () => {
    expect(shape({ group: "rule" })).toEqual([
      ["SUM101 total differs", [3, 5, 6]],
      ["BEND101 former too small", [4]],
      ["READ104 facts not held", [null]],
    ]);
    expect(shape({ group: "rule", sort: "severity" })[0]).toEqual(["SUM101 total differs", [6, 3, 5]]);
  });

  test("should group by member in the sheet's order, or the worst first", () => {
    expect(shape({ group: "member" })).toEqual([
      ["no one member", [null]],
      ["Beam 1", [3, 6]],
      ["Wall 2", [4, 5]],
    ]);
    expect(shape({ group: "member", sort: "severity" }).map(([key]) => key)).toEqual([
      "Beam 1",
      "Wall 2",
      "no one member",
    ]);
  });

  test("should filter by severity, rule, member and words together", () => {
    expect(shape({}, new Set<Severity>(["note"]))).toEqual([["note", [null, 5]]]);
    expect(shape({ rule: "SUM101", member: "Wall 2" })).toEqual([["note", [5]]]);
    expect(shape({ text: " Former TOO " })).toEqual([["unsafe", [4]]]);
    expect(shape({ text: "e6" })).toEqual([["unsafe", [6]]]);
    expect(shape({ text: "mandrel" })).toEqual([]);
  });

  test("should lose no finding and show none twice, however arranged", () => {
    for (const group of ["severity", "rule", "member"] as const) {
      for (const sort of ["row", "severity"] as const) {
        const rows = shape({ group, sort }).flatMap(([, each]) => each as (number | null)[]);
        expect(new Set(rows)).toEqual(new Set(FINDINGS.map(({ row }) => row)));
        expect(rows).toHaveLength(FINDINGS.length);
      }
    }
  });
});

describe("findingsTable", () => {
  test("should give a header and one line a finding, cells parted by tabs", () => {
    const lines = findingsTable(FINDINGS).split("\r\n");
    expect(lines[0]?.split("\t")).toEqual([
      "Severity",
      "Sheet",
      "Row",
      "Cell",
      "Member",
      "Rule",
      "Finding",
      "Remedy",
      "Source",
    ]);
    expect(lines).toHaveLength(6);
    expect(lines[1]).toBe("Note\tBars\t\t\t\tREAD104 facts not held\tno grade\t\t");
  });

  test("should keep breaks out of its cells, and formulas out of the sheet it is pasted into", () => {
    const table = findingsTable([
      finding(3, "note", { member: '=HYPERLINK("x")', message: "a\tb\nc", outcome: "unsure" }),
    ]);
    expect(table.split("\r\n")[1]).toBe(
      'Note\tBars\t3\tE3\t\'=HYPERLINK("x")\tSUM101 total differs\tnot judged: a b c\t\t',
    );
  });
});
