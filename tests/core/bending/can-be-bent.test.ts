import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bendOrder } from "../../../core/bending/bend-order";
import { canBeBent } from "../../../core/bending/can-be-bent";
import type { Machine } from "../../../core/bending/machine";
import type { PlanarPath } from "../../../core/shapes/path";
import { isRefusal } from "../../../core/units/refusal";

const MACHINE: Machine = {
  name: "M1",
  rated: [],
  formers: null,
  pins: [30],
  orbitRadius: 99,
  backRestDistance: 90,
  largestAngle: 190,
  guardRadius: null,
};

function question(legs: readonly number[], turns: readonly number[], machine: Partial<Machine> = {}) {
  const path: PlanarPath = {
    kind: "planar",
    legs: legs.map((length) => ({ length, free: false, letter: null })),
    turns: turns.map((angle) => ({ angle, radius: null })),
    inOnePlane: true,
  };
  const bentTo = turns.map((angle) => Math.abs(angle) + 4);
  return { path, diameter: 12, former: 48, machine: { ...MACHINE, ...machine }, bentTo };
}

describe("canBeBent", () => {
  it("should answer as the search for the cheapest order does", () => {
    const leg = fc.integer({ min: 60, max: 400 });
    const turn = fc.constantFrom(90, -90, 135, 45, -45, 180);
    fc.assert(
      fc.property(fc.array(fc.tuple(leg, turn), { minLength: 1, maxLength: 4 }), leg, (bends, last) => {
        const asked = question(
          [...bends.map(([length]) => length), last],
          bends.map(([, angle]) => angle),
        );
        const order = bendOrder(asked);
        const answer = canBeBent(asked);
        if (isRefusal(order)) expect(isRefusal(answer)).toBe(true);
        else expect(answer).toBe(order.kind === "order");
      }),
      { numRuns: 150, seed: 5 },
    );
  });

  it("should take no order that swings beyond the guard", () => {
    // an end of 2000 swings out of the former's centre by more than 2000 whichever way round, the other by 500
    expect(canBeBent(question([500, 2000], [90], { guardRadius: 900 }))).toBe(true);
    expect(canBeBent(question([1500, 2000], [90], { guardRadius: 900 }))).toBe(false);
    expect(canBeBent(question([1500, 2000], [90]))).toBe(true);
  });

  it("should refuse bends of more than one plane and tools that are not known", () => {
    const flat = question([500, 500], [90]);
    expect(isRefusal(canBeBent({ ...flat, path: { ...flat.path, inOnePlane: false } }))).toBe(true);
    expect(isRefusal(canBeBent(question([500, 500], [90], { orbitRadius: null })))).toBe(true);
  });
});
