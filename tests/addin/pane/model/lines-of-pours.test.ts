import { describe, expect, test } from "vitest";
import { linesOfPours } from "../../../../addin/pane/model/lines-of-pours";

const TOTALS = {
  groupedBy: "pour",
  table: [
    ["pour", "H10", "H20", "H32", "total, t"],
    ["P1", 0.5, "", "", 0.5],
    ["P2", 0.25, 2, "", 2.25],
    ["P3", "", 1, 4, 5],
    ["total", 0.75, 3, 4, 7.75],
  ],
} as const;

describe("linesOfPours", () => {
  test("should be of the pours chosen alone, with their own total and how many they are", () => {
    expect(linesOfPours(TOTALS, ["P1", "P2"])).toEqual([
      ["pour", "H10", "H20", "H32", "total, t"],
      ["P1", 0.5, "", "", 0.5],
      ["P2", 0.25, 2, "", 2.25],
      ["total of 2 of 3 pours", 0.75, 2, "", 2.75],
    ]);
  });

  test("should be the whole table where no choice was made", () => {
    expect(linesOfPours(TOTALS, null)).toBe(TOTALS.table);
  });
});
