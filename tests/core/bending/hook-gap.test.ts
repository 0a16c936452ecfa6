import { describe, expect, it } from "vitest";
import { hookGap } from "../../../core/bending/hook-gap";

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
