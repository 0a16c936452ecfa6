import { Decimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ExactSum } from "../../../core/totals/exact-sum";
import { tonnageByPour } from "../../../core/totals/tonnage-by-pour";

describe("ExactSum", () => {
  it("should sum tenths as they are printed", () => {
    const sum = new ExactSum();
    for (let i = 0; i < 10; i += 1) sum.add(0.1);
    expect(sum.value).toBe(1);
  });

  it("should agree with decimal.js for masses of any fineness and size", () => {
    const mass = fc.oneof(
      fc.integer({ min: 0, max: 5_000_000_000 }).map((mg) => mg / 1_000_000),
      fc.double({ min: 0, max: 1e9, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(mass, { maxLength: 60 }), (masses) => {
        const sum = new ExactSum();
        for (const value of masses) sum.add(value);
        const exact = masses.reduce((total, value) => total.plus(value), new Decimal(0));
        expect(sum.value).toBe(exact.toNumber());
        expect(sum.over(1000)).toBe(exact.div(1000).toNumber());
      }),
      { numRuns: 500, seed: 5 },
    );
  });
});

describe("tonnageByPour", () => {
  it("should give tonnes by pour and size in the order of the schedule", () => {
    const tonnage = tonnageByPour([
      { pour: "P2", size: "H16", mass: 120.3 },
      { pour: "P1", size: "H12", mass: 80.2 },
      { pour: "P2", size: "H12", mass: 0.1 },
      { pour: "P2", size: "H16", mass: 0.2 },
    ]);
    expect(tonnage.pours.map(({ pour, bySize, total }) => [pour, Object.fromEntries(bySize), total])).toEqual(
      [
        ["P2", { H16: 0.1205, H12: 0.0001 }, 0.1206],
        ["P1", { H12: 0.0802 }, 0.0802],
      ],
    );
    expect(Object.fromEntries(tonnage.bySize)).toEqual({ H16: 0.1205, H12: 0.0803 });
    expect([tonnage.total, tonnage.rows]).toEqual([0.2008, 4]);
  });

  it("should give nothing for nothing", () => {
    expect(tonnageByPour([])).toMatchObject({ pours: [], total: 0, rows: 0 });
  });
});
