import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curvatureKept, elasticCoreShare } from "../../../core/bending/elastic-core";
import { legFlexure } from "../../../core/bending/leg-flexure";
import { springback } from "../../../core/bending/springback";

const E = 200000;

/** Moment of a round section bent to radius R, by Simpson's rule over depth; an independent route. */
function momentByQuadrature(diameter: number, radius: number, stress: (strain: number) => number): number {
  const half = diameter / 2;
  const strips = 20000;
  let sum = 0;
  for (let strip = 0; strip <= strips; strip += 1) {
    // y = half sin(phi): the square root's end becomes smooth
    const phi = (Math.PI / 2) * (strip / strips);
    const y = half * Math.sin(phi);
    const value = stress(y / radius) * y * 2 * (half * Math.cos(phi)) ** 2;
    sum += value * (strip === 0 || strip === strips ? 1 : strip % 2 === 1 ? 4 : 2);
  }
  return (2 * sum * (Math.PI / 2 / strips)) / 3;
}

const inertia = (diameter: number) => (Math.PI * diameter ** 4) / 64;
const plastic = (yieldStress: number) => (strain: number) => Math.min(yieldStress, E * strain);

describe("elastic core of a round bar", () => {
  it("keeps all curvature without a core and none when wholly elastic", () => {
    expect(curvatureKept(0)).toBe(1);
    expect(curvatureKept(1)).toBeCloseTo(0, 12);
    expect(curvatureKept(3)).toBe(0);
  });

  it("should give the kept curvature that quadrature over the section gives", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 50 }),
        fc.double({ min: 2, max: 190, noNaN: true }),
        fc.integer({ min: 235, max: 750 }),
        (diameter, ratio, yieldStress) => {
          const former = ratio * diameter;
          const radius = (former + diameter) / 2;
          const core = elasticCoreShare({ diameter, former, yield: yieldStress });
          const moment = momentByQuadrature(diameter, radius, plastic(yieldStress));
          const kept = core >= 1 ? 0 : 1 - (moment * radius) / (E * inertia(diameter));
          expect(curvatureKept(core)).toBeCloseTo(kept, 5);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("follows linear hardening as quadrature does", () => {
    const diameter = 16;
    const radius = 40;
    const hardening = 0.007;
    const law = (strain: number) =>
      strain < 500 / E ? E * strain : 500 + hardening * E * (strain - 500 / E);
    const kept = 1 - (momentByQuadrature(diameter, radius, law) * radius) / (E * inertia(diameter));
    expect(curvatureKept(elasticCoreShare({ diameter, former: 64, yield: 500 }), hardening)).toBeCloseTo(
      kept,
      7,
    );
  });

  it("is near its own series, 1 - 1.698 x + 0.849 x^3, for small cores", () => {
    for (const core of [0.0063, 0.0125, 0.0338]) {
      const series = 1 - (16 / (3 * Math.PI)) * core + (8 / (3 * Math.PI)) * core ** 3;
      expect(Math.abs(curvatureKept(core) - series)).toBeLessThan(1.5e-6);
    }
  });
});

describe("springback", () => {
  it("is 1.9 degrees at 90 for grade 500 on 4 d and 3.1 on 7 d, whatever the bar", () => {
    // xi = (500/200000)(4 + 1) = 0.0125; 90 x 1.698 x 0.0125 = 1.91; 7 d: 0.02, 3.06
    for (const diameter of [8, 16, 40]) {
      expect(springback({ angle: 90, diameter, former: 4 * diameter, yield: 500 }).springback).toBeCloseTo(
        1.91,
        2,
      );
      expect(springback({ angle: 90, diameter, former: 7 * diameter, yield: 500 }).springback).toBeCloseTo(
        3.06,
        2,
      );
    }
  });

  it("opens the radius by as much as it opens the angle", () => {
    const found = springback({ angle: 90, diameter: 32, former: 224, yield: 500 });
    // arc length is kept: 128 x 90 = released radius x released angle
    expect(found.releasedRadius * found.released).toBeCloseTo(128 * 90, 6);
    expect(found.releasedRadius - found.loadedRadius).toBeCloseTo(4.5, 1);
  });

  it("adds the legs' flexure at every angle alike", () => {
    const bar = { diameter: 10, former: 50, yield: 500, levers: 200 };
    const bare = springback({ ...bar, angle: 90, levers: 0 }).springback;
    expect(springback({ ...bar, angle: 90 }).springback - bare).toBeCloseTo(legFlexure(bar), 9);
  });

  it("never leaves less than a straight bar, and says how far it may be trusted", () => {
    const found = springback({ angle: 2, diameter: 8, former: 56, yield: 750, levers: 400 });
    expect(found.released).toBe(0);
    expect(found.trust.join(" ")).toMatch(/trial bend/);
  });
});

describe("legFlexure", () => {
  it("is the end slope of two levers under a moment that falls evenly to nothing", () => {
    // slope at the loaded end of a simply supported lever: M L / (3 E I), both levers added
    const moment = (500 * 16 ** 3) / 6;
    const slope = (moment * 200) / (3 * E * inertia(16));
    expect(legFlexure({ diameter: 16, yield: 500, levers: 200 })).toBeCloseTo((slope * 180) / Math.PI, 9);
    expect(legFlexure({ diameter: 16, yield: 500, levers: 200 })).toBeCloseTo(2.03, 2);
  });
});
