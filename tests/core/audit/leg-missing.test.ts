import { expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const HEADS = ["Mark", "Dia mm", "Total no.", "Shape", "A", "B", "C", "Length mm"];
// each length the sum of its legs by hand
const BARS = [
  ["1", 16, 10, "U", 300, 2000, 300, 2600],
  ["2", 16, 12, "U", 350, 2500, 350, 3200],
  ["3", 12, 14, "L", 250, 1800, null, 2050],
  ["4", 12, 20, "L", 400, 3000, null, 3400],
  ["5", 10, 20, "Z", 250, 900, 250, 1400],
  ["7", 16, 10, "U", 320, 2100, 320, 2740],
  ["8", 12, 14, "L", 270, 1900, null, 2170],
  ["9", 10, 14, "Z", 200, 1000, 200, 1400],
];

type Rows = readonly (readonly (string | number | null)[])[];

const told = (rows: Rows): string[] =>
  runAudit({ sheets: [sheetFromRows("List", rows)], standard: heldStandard("EC2:2004") })
    .findings.filter(({ code }) => code === "LEN108")
    .map(({ cell, message }) => `${cell}: ${message}`);
const said = (...more: Rows): string[] => told([HEADS, ...BARS, ...more]);

it("a length that is longer by one of its legs asks whether another is missing", () => {
  expect(said()).toEqual([]);
  expect(said(["6", 14, 8, "W", 250, 5050, null, 5300])).toEqual([]);
  // 250 + 5050 is 5300
  expect(said(["6", 14, 8, "W", 250, 5050, null, 5550])).toEqual([
    "H10: length 5550 mm is longer than its legs, 5300 mm, by just A: is a leg missing? 8 of 9 bars are as long as their legs",
  ]);
});

it("a leg that stands apart from the others of its bar alone is asked about", () => {
  const widened = [HEADS, ...BARS].map((cells, at) => [
    ...cells.slice(0, 7),
    at === 0 ? "D" : null,
    cells[7] ?? null,
  ]);
  const withD = (...more: Rows): string[] => told([...widened, ...more]);
  expect(withD(["6", 16, 8, "U", 340, 2200, 340, null, 2880])).toEqual([]);
  // 340 + 2200 + 340 is 2880 wherever they stand
  expect(withD(["6", 16, 8, "U", 340, 2200, null, 340, 2880])).toEqual([
    "H10: leg D of 340 mm stands where no other bar of U has one: the 3 others have C, which is blank here",
  ]);
  // so do two bars
  const another = ["10", 16, 8, "U", 330, 2300, null, 330, 2960];
  expect(withD(["6", 16, 8, "U", 340, 2200, null, 340, 2880], another)).toEqual([]);
  // an end on the other side of B
  expect(withD(["6", 12, 14, "L", null, 1700, 260, null, 1960])).toEqual([]);
});

// a former is given, so the bar is bent, and only its first leg can be what the length leaves: 7440 - 7140 = 300
it("the first leg that one bar of no named shape lacks is asked about", () => {
  const heads = ["Mark", "Dia mm", "Total no.", "Former", "A", "B", "C", "Length mm"];
  const bars = [
    ["1", 16, 60, 64, 520, 1520, 520, 2560],
    ["2", 16, 72, 64, 520, 1320, 520, 2360],
    ["3", 12, 60, null, 1520, null, null, 1520],
    ["4", 10, 49, 40, 300, 900, null, 1200],
    ["5", 10, 49, null, 2750, null, null, 2750],
    ["6", 10, 15, 40, 400, 140, 400, 940],
  ];
  expect(told([heads, ...bars, ["7", 10, 15, 40, 300, 7140, null, 7440]])).toEqual([]);
  expect(told([heads, ...bars, ["7", 10, 15, 40, null, 7140, null, 7440]])).toEqual([
    "E8: leg A is blank: the length 7440 mm leaves 300 mm for it, as 4 of 4 bars make lengths of their legs",
  ]);
});
