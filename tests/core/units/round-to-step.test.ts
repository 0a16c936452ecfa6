import Decimal from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roundExactly, roundIfSure, roundMeasured } from "../../../core/units/round-to-step";

const steps = [1, 5, 25, 6.35, 0.25];

describe("roundIfSure", () => {
  it("should agree with decimals wherever it answers, for one-decimal terms next to a boundary", () => {
    const tenth = fc.integer({ min: 0, max: 120_000 }).map((n) => n / 10);
    fc.assert(
      fc.property(tenth, tenth, tenth, fc.constantFrom(...steps), fc.boolean(), (a, b, c, step, up) => {
        const direction = up ? "up" : "nearest";
        const exact = new Decimal(a).plus(b).minus(new Decimal(c).times(0.5));
        const error = 8 * Number.EPSILON * (a + b + c);
        const sure = roundIfSure(a + b - 0.5 * c, error, step, direction);
        const expected = up
          ? exact.div(step).ceil().times(step).toNumber()
          : exact.div(step).plus(0.5).floor().times(step).toNumber();
        expect(Number.isNaN(sure) ? roundExactly(exact, step, direction) : sure).toBe(expected);
      }),
      { numRuns: 20_000 },
    );
  });

  it("leaves a sum that is exactly 7200 to the decimals, where plain floats go up to 7225", () => {
    // 5756.7 + 1548.9 - 0.5 x 91.4 - 59.9 = 7200 by hand; floats give 7200.000000000001
    const value = 5756.7 + 1548.9 - 0.5 * 91.4 - 59.9;
    expect(Math.ceil(value / 25) * 25).toBe(7225);
    expect(roundIfSure(value, 8 * Number.EPSILON * 7500, 25, "up")).toBeNaN();
    expect(roundExactly(new Decimal(7200), 25, "up")).toBe(7200);
  });

  it("leaves a value unrounded where the step is 0", () => {
    expect(roundIfSure(1234.56, 1e-9, 0, "up")).toBe(1234.56);
    expect(roundExactly(new Decimal("1234.56"), 0, "up")).toBe(1234.56);
  });
});

describe("roundMeasured", () => {
  it("keeps a multiple that float noise moved", () => {
    expect(roundMeasured(1000.0000000001, 25, "up")).toBe(1000);
    expect(roundMeasured(120 * 25.4, 6.35, "up")).toBe(3048);
    expect(roundMeasured(1012.4999999999, 25, "nearest")).toBe(1025);
  });

  it("goes up by the part of a step that is more than noise", () => {
    expect(roundMeasured(1000.001, 25, "up")).toBe(1025);
    expect(roundMeasured(1012.49, 25, "nearest")).toBe(1000);
  });
});
