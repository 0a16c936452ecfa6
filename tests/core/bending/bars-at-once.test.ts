import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { barsAtOnce } from "../../../core/bending/bars-at-once";
import type { RatedBars } from "../../../core/bending/machine";
import { isRefusal, refusalText } from "../../../core/units/refusal";

const plate = (...rated: RatedBars[]) => ({ name: "M1", rated });
const D32 = plate({ diameter: 32, yield: 500, bars: 1 });
const bars = (
  machine: ReturnType<typeof plate>,
  diameter: number,
  yieldStress: number,
  work: "bend" | "cut" = "bend",
) => {
  const found = barsAtOnce(machine, { diameter, yield: yieldStress }, work);
  return isRefusal(found) ? refusalText(found) : [found.bars, found.basis];
};

describe("barsAtOnce", () => {
  it("takes the plate where it names the bar", () => {
    const machine = plate({ diameter: 16, yield: 500, bars: 4 }, { diameter: 32, yield: 500, bars: 1 });
    expect(bars(machine, 16, 500)).toEqual([4, "plate"]);
    expect(bars(machine, 16, 460)).toEqual([4, "plate"]);
  });

  it("does not bend a 32 of grade 600 where the plate says 32 of grade 500", () => {
    expect(bars(D32, 32, 500)).toEqual([1, "plate"]);
    expect(bars(D32, 32, 600)).toEqual([0, "estimate"]);
  });

  it("scales by the cube of the diameter for bending and the square for cutting, marked an estimate", () => {
    // (32/25)^3 = 2.10, (32/25)^2 = 1.64; (32/20)^2 = 2.56
    expect(bars(D32, 25, 500)).toEqual([2, "estimate"]);
    expect(bars(D32, 25, 500, "cut")).toEqual([1, "plate"]);
    expect(bars(D32, 20, 500, "cut")).toEqual([2, "estimate"]);
  });

  it("estimates no more than three side by side", () => {
    expect(bars(D32, 10, 500)).toEqual([3, "estimate"]);
  });

  it("never estimates above the plate's row for a lighter bar", () => {
    const machine = plate({ diameter: 12, yield: 500, bars: 2 }, { diameter: 40, yield: 500, bars: 1 });
    // (40/16)^3 = 15 would be three, but even of 12 mm the plate lets only two
    expect(bars(machine, 16, 500)).toEqual([2, "estimate"]);
  });

  it("is unsure without a plate, or without its grade", () => {
    expect(bars(plate(), 16, 500)).toMatch(/plate of M1 is not written down/);
    expect(bars(plate({ diameter: 32, yield: null, bars: 1 }), 16, 500)).toMatch(/without a grade/);
  });

  it("should never let more of a stronger or thicker bar", () => {
    const size = fc.constantFrom(8, 10, 12, 16, 20, 25, 32, 40);
    const row = fc.record({
      diameter: size,
      yield: fc.constantFrom(250, 500),
      bars: fc.integer({ min: 1, max: 6 }),
    });
    // a plate that is itself in order: more bars only for lighter duty
    const inOrder = (rows: RatedBars[]) =>
      rows.every((a) =>
        rows.every((b) => !(a.diameter >= b.diameter && a.yield! >= b.yield! && a.bars > b.bars)),
      );
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 4 }), size, size, (rated, one, other) => {
        fc.pre(inOrder(rated));
        const [thin, thick] = [Math.min(one, other), Math.max(one, other)];
        const count = (diameter: number, yieldStress: number) => {
          const found = barsAtOnce({ name: "M", rated }, { diameter, yield: yieldStress }, "bend");
          return isRefusal(found) ? Number.NaN : found.bars;
        };
        expect(count(thick, 500)).toBeLessThanOrEqual(count(thin, 500));
        expect(count(thin, 600)).toBeLessThanOrEqual(count(thin, 500));
      }),
    );
  });
});
