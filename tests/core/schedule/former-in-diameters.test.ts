import { describe, expect, it } from "vitest";
import { formerInDiameters } from "../../../core/schedule/cells/former-in-diameters";

describe("formerInDiameters", () => {
  // lists to DIN EN 1992 write "4 ds", French ones "4Ø", New Zealand's "5d": common practice
  it.each([
    ["4 ds", 16, 64],
    ["7Ø", 20, 140],
    ["5d", 12, 60],
    ["2,5 d", 8, 20],
    ["6 dia", 25, 150],
    ["3d=39", 13, 39],
  ])("reads %s for a bar of %d mm as %d mm", (typed, diameter, expected) => {
    expect(formerInDiameters(typed, diameter)).toBe(expected);
  });

  it.each([["40 dia"], ["64 Ø"], ["64 mm"], ["140"], ["D16"], ["4d/7d"], [64], [null]])(
    "leaves %s to the reading of lengths",
    (typed) => {
      expect(formerInDiameters(typed, 16)).toBeNull();
    },
  );

  it("says nothing of a bar whose size is not read", () => {
    expect(formerInDiameters("4d", null)).toBeNull();
  });
});
