import { expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const HEADS = ["Mark", "Dia mm", "Total no.", "Shape", "A", "B", "C", "D", "Length mm"];
// each length the sum of its legs by hand
const BARS = [
  ["1", 16, 10, "U", 300, 2000, 300, null, 2600],
  ["2", 16, 12, "U", 350, 2500, 350, null, 3200],
  ["3", 12, 14, "L", 250, 1800, null, null, 2050],
  ["4", 12, 20, "L", 400, 3000, null, null, 3400],
  ["5", 10, 20, "Z", 250, 900, 250, null, 1400],
  ["6", 12, 14, "L", 270, 1900, null, null, 2170],
];

const said = (...more: (string | number | null)[][]): string[] =>
  runAudit({
    sheets: [sheetFromRows("List", [HEADS, ...BARS, ...more])],
    standard: heldStandard("EC2:2004"),
  })
    .findings.filter(({ code }) => code === "LEN108")
    .map(({ cell, message }) => `${cell}: ${message}`);

it("a leg that stands apart from the others of its bar alone is asked about", () => {
  expect(said(["7", 16, 8, "U", 320, 2100, 320, null, 2740])).toEqual([]);
  // 320 + 2100 + 320 is 2740 wherever they stand
  expect(said(["7", 16, 8, "U", 320, 2100, null, 320, 2740])).toEqual([
    "H8: leg D of 320 mm stands where no other bar of U has one: the 2 others have C, which is blank here",
  ]);
  // so do two bars
  const another = ["8", 16, 8, "U", 330, 2200, null, 330, 2860];
  expect(said(["7", 16, 8, "U", 320, 2100, null, 320, 2740], another)).toEqual([]);
  // an end on the other side of B
  expect(said(["7", 12, 14, "L", null, 1700, 260, null, 1960])).toEqual([]);
  // one other bar alone is no habit
  expect(said(["7", 10, 14, "Z", 200, 1000, null, 200, 1400])).toEqual([]);
});
