import { describe, expect, it } from "vitest";
import { hookGap } from "../../../core/bending/hook-gap";
import { radiusAfterRelease, radiusConcerns } from "../../../core/bending/radius-after-release";
import type { PlanarPath } from "../../../core/shapes/path";

describe("hookGap", () => {
  const hook = { diameter: 10, former: 40, yield: 500, springback: 10, largestAngle: 190 };

  it("lets a tail of 120 pass and not one of 260", () => {
    // 120 sin 10 = 20.8 below the 40 between the legs; 260 sin 10 = 45.1 above
    expect(hookGap({ ...hook, tail: 120 })).toMatchObject({ closes: false, lean: expect.closeTo(20.8, 1) });
    expect(hookGap({ ...hook, tail: 260 })).toMatchObject({ closes: true, lean: expect.closeTo(45.1, 1) });
  });

  it("stays open where the machine turns no further", () => {
    expect(hookGap({ ...hook, tail: 120, springback: 14 }).open).toBeCloseTo(4, 9);
    expect(hookGap({ ...hook, tail: 120 }).open).toBe(0);
  });

  it("is wider after release by what the radius grew", () => {
    const { gap, width } = hookGap({ ...hook, tail: 120 });
    // R 25 on the former, kept 0.9788: 25.54; 2 x 25.54 - 10
    expect(gap).toBeCloseTo(41.08, 1);
    expect(width - gap).toBeCloseTo(20, 9);
  });
});

describe("radiusAfterRelease", () => {
  it("of a 32 mm bar on 224 grows by 4.5, and a right angle loses 0.4292 of it", () => {
    // kept 1 - 1.698 x 0.02 = 0.966: 128 / 0.966 - 128 = 4.5
    const found = radiusAfterRelease({ diameter: 32, former: 224, yield: 500 });
    expect(found.growth).toBeCloseTo(4.5, 1);
    expect(found.inside).toBeCloseTo(116.5, 1);
    expect(found.legsAtRightAngle / found.growth).toBeCloseTo(-0.4292, 4);
    expect(found.hookWidth).toBeCloseTo(9, 1);
  });

  it("matters for many thick bends, hooks and high strength only", () => {
    const path = (turns: number[]): PlanarPath => ({
      kind: "planar",
      legs: [...turns, 0].map(() => ({ length: 500, free: false, letter: null })),
      turns: turns.map((angle) => ({ angle, radius: null })),
      inOnePlane: true,
    });
    const bar = { diameter: 25, former: 175, yield: 500 };
    expect(radiusConcerns(path([90, 90]), bar)).toEqual([]);
    expect(radiusConcerns(path([90, 90, 90, 90, 90]), bar)).toHaveLength(1);
    expect(radiusConcerns(path([180]), bar)).toEqual(["a hook's width grows"]);
    expect(radiusConcerns(path([90]), { ...bar, yield: 750 })).toHaveLength(1);
  });
});
