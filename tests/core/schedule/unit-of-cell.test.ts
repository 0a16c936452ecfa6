import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { standardNamed } from "../shapes/resolved";

const standard = standardNamed("BS8666:2005");
const HEADER = ["Bar mark", "Type and size", "Total no.", "Length", "Shape code", "A", "B"];

function problemsOfLast(rows: readonly (readonly Cell[])[]) {
  const bars = rows.map((cells, index) => [String(index + 1), "H16", 2, ...cells]);
  return readSchedule(sheetFromRows("S", [HEADER, ...bars]), standard).bars.at(-1)?.problems;
}

describe("a length in another unit than its column", () => {
  it.each([0.875, "0.875"])("should be shown as typed where %j m stands among millimetres", (length) => {
    const plain = [875, "11", 500, 400];
    expect(problemsOfLast([plain, plain, plain, [length, "11", 500, 400]])).toEqual([
      {
        field: "length",
        column: 3,
        typed: length,
        outcome: "guessed",
        guess: "unit-of-cell",
        reason: "0.875 was taken in m, unlike its column: 875 mm",
        proposal: 875,
      },
    ]);
  });

  it("should be shown as typed where 875 mm stand among metres", () => {
    const plain = [0.875, "11", 0.5, 0.4];
    expect(problemsOfLast([plain, plain, plain, [875, "11", 0.5, 0.4]])).toMatchObject([
      { typed: 875, reason: "875 was taken in mm, unlike its column: 875 mm", proposal: 875 },
    ]);
  });
});
