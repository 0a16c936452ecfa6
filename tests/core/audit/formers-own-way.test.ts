import { expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const HEADS = ["Mark", "Size", "Total no.", "Length mm", "Pin dia"];
// NZS 3109 bends 20 and 25 mm about 5 d and plain links about 2 d; BS 8666 Table 2 has 7 d and 4 d
const BARS = [
  ["1", "20", 10, 2000, 100],
  ["2", "20", 12, 2400, 100],
  ["3", "20", 14, 2800, 100],
  ["4", "10", 20, 900, 20],
  ["5", "16", 20, 1900, 80],
  ["6", "25", 6, 3000, 125],
];

const severities = (isStandardAssumed: boolean, ...more: (string | number)[][]): string[] =>
  runAudit({
    sheets: [sheetFromRows("List", [HEADS, ...BARS, ...more])],
    standard: heldStandard("BS8666:2005"),
    isStandardAssumed,
  })
    .findings.filter(({ code }) => code === "BEND101")
    .map(({ severity, outcome }) => `${severity} ${outcome}`);

it("formers of a list with leasts of its own are perhaps unsafe where nobody chose the standard", () => {
  expect(new Set(severities(true))).toEqual(new Set(["unsafe unsure"]));
  expect(new Set(severities(false))).toEqual(new Set(["unsafe broken"]));
  // 50 is below the 100 of the other bars of 20 mm
  expect(severities(true, ["7", "20", 10, 2000, 50])).toContain("unsafe broken");
});
