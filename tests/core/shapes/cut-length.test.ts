import Decimal from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutLength } from "../../../core/shapes/cut-length";
import { developedLength } from "../../../core/shapes/developed-length";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { resolved } from "./resolved";

/**
 * Derived reference cases, worked by hand from the printed formulas of BS 8666:2005 Table 3 with r of
 * Table 2: code, d, dims, formula, rounded up to 25, centre line by geometry to one decimal.
 */
const CASES: readonly [string, number, (number | null)[], number, number, number][] = [
  ["11", 12, [1000, 400], 1376, 1400, 1375.1],
  ["11", 20, [1000, 400], 1345, 1350, 1345.7],
  ["21", 16, [1000, 400, 500], 1836, 1850, 1833.7],
  ["31", 16, [1000, 400, 500, 350], 2154, 2175, 2150.5],
  ["41", 32, [1000, 400, 500, 350, 300], 2198, 2200, 2202.2],
  ["51", 12, [1000, 400, 500], 3680, 3700, 3675.6],
  ["63", 8, [1000, 400, 500], 4104, 4125, 4100.5],
  ["12", 16, [1000, 400, 300], 1251.8, 1275, 1251.8],
];

describe("cutLength", () => {
  it.each(CASES)(
    "code %s, %d mm: printed formula, rounding and geometry",
    (shape, diameter, dims, ...expected) => {
      const bar = resolved({ shape, diameter, dims });
      const cut = cutLength(bar);
      const developed = developedLength(bar);
      if (isRefusal(cut) || isRefusal(developed)) throw new Error("refused");
      expect(cut.unrounded).toBeCloseTo(expected[0], 9);
      expect(cut.length).toBe(expected[1]);
      expect(cut.basis).toBe("printed formula");
      expect(developed.length).toBeCloseTo(expected[2], 1);
    },
  );

  it("takes r 87 of a 25 mm bar in the formula, and half of 175 in the geometry", () => {
    const bar = resolved({ shape: "11", diameter: 25, dims: [1000, 500] });
    // 1000 + 500 - 0.5 x 87 - 25
    expect(cutLength(bar)).toMatchObject({ unrounded: 1431.5, formulaRadius: 87, length: 1450 });
    // (1000 - 112.5) + (500 - 112.5) + pi / 2 x 100
    expect(developedLength(bar)).toMatchObject({ length: expect.closeTo(1275 + 50 * Math.PI, 9) });
    const same = resolved({ shape: "11", diameter: 25, dims: [1000, 500], former: 175 });
    expect(cutLength(same)).toMatchObject({ formulaRadius: 87 });
  });

  it("takes half of a former that is not the least as r", () => {
    const bar = resolved({ shape: "11", diameter: 16, dims: [1000, 500], former: 200 });
    // 1000 + 500 - 0.5 x 100 - 16
    expect(cutLength(bar)).toMatchObject({ unrounded: 1434, formulaRadius: 100, length: 1450 });
  });

  it("gives the printed length where bends overlap, which the geometry refuses by name", () => {
    const bar = resolved({ shape: "21", diameter: 16, dims: [1000, 50, 500] });
    expect(cutLength(bar)).toMatchObject({ unrounded: 1486, length: 1500 });
    const refused = developedLength(bar);
    // 50 - 2 x 48
    expect(isRefusal(refused) && refusalText(refused)).toContain(
      "bends 1 and 2 overlap: leg B of 50 mm leaves -46 mm of straight",
    );
  });

  it("keeps an exact multiple of the step", () => {
    // 1007 + 400 + 482 - 32 - 32
    expect(cutLength(resolved({ shape: "21", diameter: 16, dims: [1007, 400, 482] }))).toMatchObject({
      length: 1825,
    });
    expect(cutLength(resolved({ shape: "00", diameter: 16, dims: [1000] }))).toMatchObject({ length: 1000 });
    // 5756.7 + 1548.9 + 8.4 - 32 - 32: tenths that make a multiple in decimals only
    expect(cutLength(resolved({ shape: "21", diameter: 16, dims: [5756.7, 1548.9, 8.4] }))).toMatchObject({
      length: 7250,
    });
  });

  it("uses the sloping form of a helix only where its pitch exceeds a fifth of the diameter", () => {
    // 20 pi (500 - 10) = 30787.6; 20 sqrt((pi 490)^2 + 101^2) = 30853.8
    expect(cutLength(resolved({ shape: "77", diameter: 10, dims: [500, 100, 20] }))).toMatchObject({
      unrounded: expect.closeTo(20 * Math.PI * 490, 6),
      length: 30800,
    });
    expect(cutLength(resolved({ shape: "77", diameter: 10, dims: [500, 101, 20] }))).toMatchObject({
      unrounded: expect.closeTo(20 * Math.sqrt((Math.PI * 490) ** 2 + 101 ** 2), 6),
      length: 30875,
    });
  });

  it("takes the geometric length of a path, which has no printed formula", () => {
    expect(cutLength(resolved({ shape: "600 +90 400", diameter: 16, dims: [] }))).toMatchObject({
      basis: "geometry",
      length: 975,
      unrounded: expect.closeTo(966.83, 2),
    });
  });

  it("should round sums of tenths as decimals do, for every size", () => {
    const tenths = fc.integer({ min: 1000, max: 60_000 }).map((n) => n / 10);
    const sizes = fc.constantFrom<[number, number]>(
      [8, 16],
      [12, 24],
      [16, 32],
      [20, 70],
      [25, 87],
      [40, 140],
    );
    fc.assert(
      fc.property(tenths, tenths, tenths, sizes, (A, B, C, [diameter, r]) => {
        // BS 8666:2005 Table 3, code 51: 2(A + B + (C)) - 2.5r - 5d
        const sum = new Decimal(A)
          .plus(B)
          .plus(C)
          .times(2)
          .minus(new Decimal(r).times("2.5"))
          .minus(5 * diameter);
        const cut = cutLength(resolved({ shape: "51", diameter, dims: [A, B, C] }));
        expect(cut).toMatchObject({ length: sum.div(25).ceil().times(25).toNumber() });
      }),
      { numRuns: 3000 },
    );
  });
});
