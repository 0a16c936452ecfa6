import { describe, expect, it } from "vitest";
import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";
import { longerThanOutside } from "../../../core/shapes/leg-basis";
import type { PlanarPath } from "../../../core/shapes/path";

const leg = (length: number) => ({ length, free: false, letter: null });
const bent = (...angles: number[]): PlanarPath => ({
  kind: "planar",
  legs: [leg(500), ...angles.map(() => leg(400))],
  turns: angles.map((angle) => ({ angle, radius: null })),
  inOnePlane: true,
});

describe("longerThanOutside", () => {
  // derived by hand: a right angle moves both its legs' ends in by the depth of the measured line
  it("should add half and a whole diameter at both ends of a right angle", () => {
    expect(longerThanOutside(bent(90), 16, "outside")).toBe(0);
    expect(longerThanOutside(bent(90), 16, "centre line")).toBeCloseTo(16, 9);
    expect(longerThanOutside(bent(90), 16, "inside")).toBeCloseTo(32, 9);
  });

  it("should go by tan(t/2) up to 90 degrees and by the extreme of the bend above", () => {
    // tan 22.5 degrees is sqrt 2 - 1
    expect(longerThanOutside(bent(45), 10, "centre line")).toBeCloseTo(10 * (Math.SQRT2 - 1), 9);
    expect(longerThanOutside(bent(135), 10, "centre line")).toBeCloseTo(10, 9);
  });
});

describe("BAR.EXPLAIN of site deductions", () => {
  it("should set the site length beside the geometry of legs to outside, centre line and inside", () => {
    const lines = WORKSHEET_FUNCTIONS.get("EXPLAIN")!
      .call([[["500 +90 300"]], [[16]], undefined, [["INDIA-SITE"]]], { defaultStandard: "BS8666:2005" })
      .map(([line]) => String(line));
    const of = (basis: string) =>
      lines.find((line) => line.startsWith(`if the legs are measured to the ${basis}`));
    // 500 + 300 - 2 x 16 = 768; with r 2d the outside reading takes 2.07 d, the centre line 1.07 d off
    expect(of("outside")).toMatch(/too (long|short) by/);
    const shortBy = (basis: string) => {
      const [, word, mm] = /too (long|short) by ([\d.]+) mm/.exec(of(basis) ?? "") ?? [];
      return (word === "short" ? 1 : -1) * Number(mm);
    };
    expect(shortBy("centre line") - shortBy("outside")).toBeCloseTo(16, 2);
    expect(shortBy("inside") - shortBy("outside")).toBeCloseTo(32, 2);
  });
});
