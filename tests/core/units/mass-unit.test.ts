import { describe, expect, it } from "vitest";
import { kilogramsIn, poundsPerFoot } from "../../../core/units/mass-unit";
import { isRefusal, refusalText } from "../../../core/units/refusal";

describe("kilogramsIn", () => {
  // international yard and pound agreement of 1959: 1 lb is 0.45359237 kg; the US ton is 2000 lb
  it.each([
    ["kg", 1],
    [" T ", 1000],
    ["lb", 0.45359237],
    ["ton", 907.18474],
  ])("%s", (unit, expected) => {
    expect(kilogramsIn(unit)).toBeCloseTo(expected, 9);
  });

  it("refuses another word by what is held", () => {
    const answer = kilogramsIn("stone");
    expect(isRefusal(answer) && refusalText(answer)).toBe(
      `unit "stone" is no unit of mass here: write kg, t, lb, ton`,
    );
  });
});

describe("poundsPerFoot", () => {
  it("turns the kg/m of ASTM A615 bars into its lb/ft, within the printed precision", () => {
    // PCI Design Handbook, Design Aid 15.4.1: size, kg/m, lb/ft
    for (const [kilograms, pounds] of [
      [0.56, 0.376],
      [1.552, 1.043],
      [3.973, 2.67],
      [20.24, 13.6],
    ] as const) {
      expect(Math.abs(poundsPerFoot(kilograms) - pounds)).toBeLessThan(0.0035);
    }
  });
});
