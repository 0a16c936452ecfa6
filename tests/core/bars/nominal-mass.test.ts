import { describe, expect, it } from "vitest";
import { nominalArea } from "../../../core/bars/nominal-area";
import { nominalMass } from "../../../core/bars/nominal-mass";

describe("nominal area and mass of a round bar", () => {
  // hand sums: pi/4 x 20^2 = 314.159 mm2; 314.159e-6 m2 x 7850 kg/m3 = 2.46615 kg/m
  it("follows pi d2/4 and 7850 kg/m3", () => {
    expect(nominalArea(20)).toBeCloseTo(314.159, 3);
    expect(nominalMass(20)).toBeCloseTo(2.46615, 5);
  });

  // 7850 kg/m3 in the form d2/162.196 kg/m, d in mm (derived: 4 x 10^6 / (7850 pi))
  it("agrees with d2/162.196", () => {
    for (const d of [6, 10, 16, 25, 40]) expect(nominalMass(d) / (d ** 2 / 162.196)).toBeCloseTo(1, 5);
  });
});
