import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";

const HEAD: Cell[] = ["Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A"];

// a thousand million bars of one row weigh more than any job: arithmetic
describe("a count that is none", () => {
  it.each([
    [1e9, '"1000000000" is too large, so it is no count of bars'],
    ["1,000,000,000", "the count is too large"],
    [-10, '"-10" is negative, so it is no count of bars'],
    [2.5, '"2.5" is no whole number, so it is no count of bars'],
  ])("is told at its cell: %s", (typed, reason) => {
    const rows = [HEAD, ["01", "H16", typed, 1000, "00", 1000], ["02", "H16", 10, 2000, "00", 2000]];
    const [first, second] = readSchedule(sheetFromRows("List", rows), heldStandard("BS8666:2005")).bars;
    expect(first?.total).toBeNull();
    expect(first?.problems).toMatchObject([{ field: "total", outcome: "unread", reason }]);
    expect(second?.total).toBe(10);
  });
});
