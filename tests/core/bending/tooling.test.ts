import { describe, expect, it } from "vitest";
import type { Machine } from "../../../core/bending/machine";
import { leastLegs, type Tooling, toolingOf } from "../../../core/bending/tooling";
import { isRefusal, refusalText } from "../../../core/units/refusal";

const MACHINE: Machine = {
  name: "M1",
  rated: [],
  formers: [48, 64],
  pins: [40, 60],
  orbitRadius: 100,
  backRestDistance: 90,
  largestAngle: null,
  guardRadius: null,
};
const refused = (change: Partial<Machine>, bar = { diameter: 16, former: 64 }) => {
  const found = toolingOf({ ...MACHINE, ...change }, bar);
  return isRefusal(found) ? `${found.kind}: ${refusalText(found)}` : null;
};

describe("toolingOf", () => {
  it("finds where the pin pushes, and the least legs", () => {
    // h = 32 + 16 + 20 = 68; a = sqrt(100^2 - 68^2) = 73.3; straight 83.3; outside 83.3 + 32 + 16
    const tooling = toolingOf(MACHINE, { diameter: 16, former: 64 }) as Tooling;
    expect(tooling.pinLever).toBeCloseTo(73.3, 1);
    const legs = leastLegs(tooling);
    expect(legs.straight).toBeCloseTo(83.3, 1);
    expect(legs.outside).toBeCloseTo(131.3, 1);
    expect(legs.held).toBe(90);
    // former + pin + two bars
    expect(legs.insideOfLink).toBe(64 + 40 + 32);
  });

  it("is unsure, not a pass, for what is not written down", () => {
    expect(refused({ pins: null })).toMatch(/^not-held: the pin's diameter of M1 is not written down/);
    expect(refused({ orbitRadius: null })).toMatch(/^not-held: the pin's orbit radius/);
    expect(refused({ backRestDistance: null })).toMatch(/^not-held: the back-rest's distance/);
    expect(refused({ formers: null })).toBeNull();
  });

  it("refuses a former that the rack does not hold", () => {
    expect(refused({}, { diameter: 16, former: 100 })).toBe(
      "value: M1 has no former of 100 mm: the rack holds 48, 64 mm",
    );
  });

  it("refuses a bar that does not pass between former and pin", () => {
    expect(refused({ orbitRadius: 60 })).toMatch(/half the former, the bar and half the pin make 68 mm$/);
  });
});
