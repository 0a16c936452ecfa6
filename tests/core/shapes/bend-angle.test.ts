import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bendAngle, solveBendAngle } from "../../../core/shapes/bend-angle";
import { noValues, placeOf } from "../../../core/shapes/shape-values";

function values(given: Record<string, number>): number[] {
  const list = noValues();
  for (const [symbol, value] of Object.entries(given)) list[placeOf(symbol)!] = value;
  return list;
}

const DEGREE = Math.PI / 180;
const crank = bendAngle("t", { equation: "D = B sin t + d cos t", from: 0, to: 90 });

describe("solveBendAngle", () => {
  it("should find the angle that an offset was made with", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 80 }),
        fc.integer({ min: 200, max: 5000 }),
        fc.constantFrom(8, 20, 40),
        (t, B, d) => {
          // below the angle where the offset is greatest, 90 - atan(d / B), it is unique
          fc.pre(t < 90 - Math.atan2(d, B) / DEGREE - 0.1);
          const D = B * Math.sin(t * DEGREE) + d * Math.cos(t * DEGREE);
          expect(solveBendAngle(crank, values({ B, d, D }))).toBeCloseTo(t, 5);
        },
      ),
    );
  });

  it("has none where the offset exceeds the slope or is thinner than the bar", () => {
    expect(solveBendAngle(crank, values({ B: 400, d: 16, D: 500 }))).toBeNaN();
    expect(solveBendAngle(crank, values({ B: 400, d: 16, D: 16 }))).toBeNaN();
    expect(solveBendAngle(crank, values({ B: 400, d: 16, D: 10 }))).toBeNaN();
  });

  it("takes the first root on the way from one end of the range to the other", () => {
    // sin t = 1/2 at 30 and 150
    const equation = "B = C sin t";
    const given = values({ B: 1, C: 2 });
    expect(solveBendAngle(bendAngle("t", { equation, from: 0, to: 180 }), given)).toBeCloseTo(30, 9);
    expect(solveBendAngle(bendAngle("t", { equation, from: 180, to: 0 }), given)).toBeCloseTo(150, 9);
    expect(solveBendAngle(bendAngle("t", { equation, from: 180, to: 90 }), given)).toBeCloseTo(150, 9);
  });

  it("keeps a right angle at the end of its range", () => {
    expect(solveBendAngle(crank, values({ B: 400, d: 16, D: 400 }))).toBeCloseTo(
      // 400 sin t + 16 cos t = 400 holds at 90 and, first, at 90 - 2 atan(16 / 400)
      90 - (2 * Math.atan2(16, 400)) / DEGREE,
      9,
    );
  });

  it("throws for an equation that is none, or not linear in sine and cosine", () => {
    expect(() => bendAngle("t", { equation: "B sin t", from: 0, to: 90 })).toThrow(/no equation/);
    expect(() => bendAngle("t", { equation: "B = tan t", from: 0, to: 90 })).toThrow(/sin and cos/);
  });
});
