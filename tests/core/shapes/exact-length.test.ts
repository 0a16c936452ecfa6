import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { developedLength } from "../../../core/shapes/developed-length";
import { exactLengthOf, shortestBetweenBends } from "../../../core/shapes/exact-length";
import { resolveShape } from "../../../core/shapes/resolve-shape";
import { brokenShapeLimits, shapeLimits } from "../../../core/shapes/shape-limits";
import { isRefusal } from "../../../core/units/refusal";
import { standardNamed } from "./resolved";

const standard = standardNamed("BS8666:2005");
const codes = [...standard.shapes.keys()];
const dim = fc.integer({ min: 20, max: 2000 });
const bar = fc.record({
  shape: fc.constantFrom(...codes, "500 +90 300 -45 200", "hook90 800 +180 300"),
  diameter: fc.constantFrom(8, 12, 16, 25, 40),
  values: fc.array(dim, { minLength: 11, maxLength: 11 }),
});

function resolved({ shape, diameter, values }: { shape: string; diameter: number; values: number[] }) {
  const letters = standard.shapes.get(shape)?.dims ?? [];
  return resolveShape({ standard, shape, diameter, dims: values.slice(0, letters.length) });
}

describe("exactLengthOf", () => {
  // hand sum: 600 + 400 - 2 (32 + 16) + pi/2 (32 + 8) = 966.8
  it("should give the developed length of a coded bar", () => {
    const shape = resolved({ shape: "11", diameter: 16, values: [600, 400] });
    expect(isRefusal(shape) ? null : exactLengthOf(shape)).toBeCloseTo(966.832, 3);
  });

  it("should agree with the straights and arcs of the laid path, refusals included", () => {
    fc.assert(
      fc.property(bar, (one) => {
        const shape = resolved(one);
        if (isRefusal(shape)) return;
        const developed = developedLength(shape);
        if (isRefusal(developed)) {
          expect(exactLengthOf(shape)).toBeNaN();
          return;
        }
        expect(exactLengthOf(shape)).toBeCloseTo(developed.length, 9);
        const path = shape.path;
        if (path?.kind !== "planar") return;
        expect(shortestBetweenBends(shape)).toBeCloseTo(
          Math.min(Infinity, ...developed.straights.slice(1, -1)),
          6,
        );
      }),
      { numRuns: 500 },
    );
  });
});

describe("brokenShapeLimits", () => {
  it("should be those judged and not met, in their order", () => {
    fc.assert(
      fc.property(bar, (one) => {
        const shape = resolved(one);
        if (isRefusal(shape)) return;
        expect(brokenShapeLimits(shape)).toEqual(shapeLimits(shape).filter(({ met }) => met === false));
      }),
      { numRuns: 500 },
    );
  });
});
