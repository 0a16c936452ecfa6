import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const standard = heldStandard("BS8666:2005");
const HEAD = [
  "Member",
  "Bar mark",
  "Type and size",
  "Total",
  "Length (mm)",
  "Shape code",
  "A (mm)",
  "Mass (kg)",
];
const told = (rows: readonly (readonly Cell[])[], code: string) =>
  runAudit({ sheets: [sheetFromRows("S", [HEAD, ...rows])], standard }).findings.filter(
    (one) => one.code === code,
  );

describe("what a list does throughout", () => {
  it("should be one finding where nearly all lengths keep another step", () => {
    const rows = [2400, 1750, 1960, 1560, 480, 3200].map((mm, at) => [
      "B",
      `${at + 1}`,
      "H16",
      2,
      mm,
      "00",
      mm,
      null,
    ]);
    expect(told(rows, "LEN101")).toEqual([]);
    expect(told(rows, "LEN107")).toHaveLength(1);
  });

  it("should let a grand total be the sum of the sums right above it", () => {
    // 16 mm is 1.579 kg/m (UK three-decimal table): 10 x 2 m is 31.58, 10 x 4 m 63.16; the second sum was typed 10 too high
    const bar = (mark: string, mm: number, mass: number) => ["B", mark, "H16", 10, mm, "00", mm, mass];
    const sum = (label: string, mass: number) => [label, null, null, null, null, null, null, mass];
    const rows = [bar("1", 2000, 31.58), bar("2", 4000, 63.16), sum("Sub total", 94.74)];
    const more = [bar("3", 2000, 31.58), bar("4", 4000, 63.16), sum("Sub total", 104.74)];
    const found = told([...rows, ...more, [], sum("GRAND TOTAL", 199.48)], "SUM103");
    expect(found.map(({ row }) => row)).toEqual([7]);
  });
});
