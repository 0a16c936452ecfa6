import { expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const HEADS = ["Mark", "Size", "Shape", "A", "Total no.", "Length mm", "Mass kg"];
// kg by hand: number x 2 m x 0.395, 0.617, 0.888, 1.58 (EN 10080); 31.6 kg are those of 16 mm, and 14 mm is no bar of BS 8666
const ROWS = [
  ...[
    ["1", "H8", "00", 2000, 10, 2000, 7.9],
    ["2", "H8", "00", 2000, 20, 2000, 15.8],
  ],
  ...[
    ["3", "H10", "00", 2000, 10, 2000, 12.34],
    ["4", "H10", "00", 2000, 5, 2000, 6.17],
  ],
  ...[
    ["5", "H12", "00", 2000, 10, 2000, 17.76],
    ["6", "H12", "00", 2000, 20, 2000, 35.52],
  ],
  ...[
    ["7", "H16", "00", 2000, 10, 2000, 31.6],
    ["8", "H16", "00", 2000, 20, 2000, 63.2],
  ],
  ["9", "H14", "00", 2000, 10, 2000, 31.6],
];
const told = (isStandardAssumed: boolean) =>
  runAudit({
    sheets: [sheetFromRows("List", [HEADS, ...ROWS])],
    standard: heldStandard("BS8666:2005"),
    isStandardAssumed,
  }).findings.filter(({ code, cell }) => code.startsWith("SIZE") && cell === "B10");

it("a size that no other row has and the standard does not hold is told once, by the surer", () => {
  const [one, ...others] = told(false);
  expect(others).toEqual([]);
  expect(one).toMatchObject({ code: "SIZE101", severity: "off-standard" });
  expect(one?.message).toMatch(/is no bar of BS8666:2005.*; size H14 stands in no other row, and the mass/);
});
