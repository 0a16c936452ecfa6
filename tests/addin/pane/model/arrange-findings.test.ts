import { describe, expect, test } from "vitest";
import type { FindingView } from "../../../../addin/pane/engine/audit-view";
import {
  AS_CHECKED,
  alikeKey,
  listedFindings,
  listLines,
} from "../../../../addin/pane/model/arrange-findings";
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
  pour: "P1",
  mark: "01",
  waiverKey: null,
  before: [],
  ways: [],
  guess: null,
  ...more,
});

const FINDINGS = [
  finding(null, "note", { code: "READ104", rule: "facts not held", member: null, message: "no grade" }),
  finding(3, "doubtful"),
  finding(4, "unsafe", { member: "Wall 2", code: "BEND101", rule: "former too small" }),
  finding(5, "note", { member: "Wall 2", pour: "P2" }),
  finding(6, "unsafe"),
];
const ALL = new Set(SEVERITIES);

const listed = (change: Partial<typeof AS_CHECKED>, shown: ReadonlySet<Severity> = ALL) =>
  listedFindings(FINDINGS, shown, { ...AS_CHECKED, ...change }).map(({ row }) => row);

describe("listedFindings", () => {
  test("should list the worst first, rows in order", () => {
    expect(listed({})).toEqual([4, 6, 3, null, 5]);
  });

  test("should list row by row", () => {
    expect(listed({ group: "row" })).toEqual([null, 3, 4, 5, 6]);
  });

  test("should list what is shown, of one rule, member or pour, or with words", () => {
    expect(listed({}, new Set<Severity>(["note"]))).toEqual([null, 5]);
    expect(listed({ rule: "BEND101" })).toEqual([4]);
    expect(listed({ member: "Wall 2" })).toEqual([4, 5]);
    expect(listed({ pour: "P2" })).toEqual([5]);
    expect(listed({ text: " FORMER " })).toEqual([4]);
    expect(listed({ text: "e6" })).toEqual([6]);
  });
});

describe("listLines", () => {
  const many = Array.from({ length: 5 }, (_, row) => finding(row + 10, "doubtful"));
  const lines = (unfolded: readonly string[], group: (typeof AS_CHECKED)["group"] = "severity") =>
    listLines([...FINDINGS, ...many], { ...AS_CHECKED, group }, new Set(unfolded)).map((line) =>
      line.kind === "finding" ? line.finding.row : [line.kind, line.key],
    );

  test("should have a rule that speaks in many rows stand once, until it is unfolded", () => {
    const key = alikeKey(many[0]!);
    expect(lines([])).toEqual([null, ["alike", key], 4, 5, 6]);
    expect(lines([key])).toEqual([null, ["alike", key], 3, 10, 11, 12, 13, 14, 4, 5, 6]);
  });

  test("should head each member's findings with its name", () => {
    expect(lines([], "member")).toEqual([
      ["member", "member no one member"],
      null,
      ["member", "member Beam 1"],
      ...[3, 6, 10, 11, 12, 13, 14],
      ["member", "member Wall 2"],
      ...[4, 5],
    ]);
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
