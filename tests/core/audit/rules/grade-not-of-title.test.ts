import { expect, it } from "vitest";
import rule from "../../../../core/audit/rules/grade-not-of-title";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";
import { ruleCases } from "../rule-cases";

const bar = (grade: string) => ({ size: "16", shape: "00", A: 2000, length: 2000, grade });

ruleCases(rule, {
  // no title says which steel is meant
  silent: [{ rows: [...Array.from({ length: 6 }, () => bar("B500B")), bar("B500C")] }],
  speaks: [],
});

function said(title: string, ...grades: readonly string[]): (string | null)[] {
  const rows: Cell[][] = [
    [title],
    ["Bar mark", "Grade", "Size", "Total no.", "Length mm", "Shape code", "A"],
    ...grades.map((grade, at): Cell[] => [String(at + 1), grade, "16", 4, 2000, "00", 2000]),
  ];
  return runAudit({
    sheets: [sheetFromRows("List", rows)],
    standard: heldStandard("BS8666:2005"),
    rules: [rule],
  }).findings.map(({ cell, message }) => `${cell}: ${message}`);
}

// wanted by what the title says in words; grades of EN 10080's makers and of ASTM A615
const FIVE = Array.from({ length: 5 }, () => "B500B");

it.each([
  ["All reinforcement B500B, stock 12 m", [...FIVE, "S235"]],
  // plain bars have a grade of their own, which the same title gives
  ["Deformed bars SD40, plain bars SR24", ["SD40", "SD40", "SD40", "SD40", "SD40", "SD30", "SR24", "SR24"]],
  ["Deformed bars Grade 60 (420 MPa)", ["Gr60", "Gr60", "Gr40", "Gr60", "Gr60", "Gr60"]],
])("asks of the one bar that is not of %s", (title, grades) => {
  const at = grades.findIndex((grade, place) => grades.indexOf(grade) === place && place > 0) + 3;
  expect(said(title, ...grades)).toEqual([
    `B${at}: grade "${grades[at - 3]}" stands in this row alone, where A1 and the other 5 rows have ${grades[0]}: ask the designer`,
  ]);
});

it.each([
  ["Reinforcement B500B, links S235", [...FIVE, "S235"]],
  ["All reinforcement B500B", [...FIVE, "S235", "S235"]],
  ["All reinforcement B500B", [...FIVE, "S235", "S235", "B500C"]],
  ["All reinforcement B500B", ["B500B", "S235"]],
  ["All reinforcement B500C", [...FIVE, "S235"]],
])("is silent: %s, %j", (title, grades) => {
  expect(said(title, ...grades)).toEqual([]);
});
