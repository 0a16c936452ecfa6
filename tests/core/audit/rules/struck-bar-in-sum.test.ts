import { expect, it } from "vitest";
import { exampleSheets } from "../../../../core/audit/example-sheet";
import rule from "../../../../core/audit/rules/struck-bar-in-sum";
import { runAudit } from "../../../../core/audit/run-audit";
import type { Sheet } from "../../../../core/schedule/sheet";
import { ruleCases, standardNamed } from "../rule-cases";

const rows = [
  { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
  { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
];

// 3.16 + 6.32 = 9.48; without the struck bar 3.16
ruleCases(rule, {
  silent: [
    { rows, foot: [{ member: "TOTAL", mass: 9.48 }] },
    { rows, foot: [{ member: "TOTAL", mass: 9.99 }] },
  ],
  speaks: [],
});

function auditStruck(total: number) {
  const [plain] = exampleSheets({ rows, foot: [{ member: "TOTAL", mass: total }] });
  const sheet: Sheet = { ...(plain as Sheet), isStruckThrough: (row) => row === 2 };
  return runAudit({ sheets: [sheet], standard: standardNamed(undefined), rules: [rule] }).findings;
}

it("should speak where a struck bar is in the sum, at the sum", () => {
  expect(auditStruck(9.48).map(({ cell, message, outcome }) => [cell, outcome, message])).toEqual([
    [
      "N4",
      "broken",
      "the line gives 9.48 for mass, which counts bars that are struck through: 3.16 without them",
    ],
  ]);
});

it("should be silent where the sum leaves the struck bar out", () => {
  expect(auditStruck(3.16)).toEqual([]);
});
