import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BendOrder, bendOrder, type OrderedBend } from "../../../core/bending/bend-order";
import { blockedBendText } from "../../../core/bending/blocked-bend-text";
import type { Machine } from "../../../core/bending/machine";
import { layOut, type Piece, pointAlong, type Step } from "../../../core/geometry/curve";
import { distance, type Point } from "../../../core/geometry/point";
import { centreLine } from "../../../core/shapes/centre-line";
import type { PlanarPath } from "../../../core/shapes/path";
import { isRefusal, refusalText } from "../../../core/units/refusal";

const lengthOf = (step: Step): number =>
  step.kind === "straight" ? step.length : step.radius * Math.abs(step.angle);

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
const D = 12;
const FORMER = 48;
const OVERBEND = 4;

function bar(legs: readonly number[], turns: readonly number[], inOnePlane = true): PlanarPath {
  return {
    kind: "planar",
    legs: legs.map((length) => ({ length, free: false, letter: null })),
    turns: turns.map((angle) => ({ angle, radius: null })),
    inOnePlane,
  };
}

function ask(path: PlanarPath, machine: Partial<Machine> = {}) {
  return bendOrder({
    path,
    diameter: D,
    former: FORMER,
    machine: { ...MACHINE, ...machine },
    bentTo: path.turns.map((turn) => Math.abs(turn.angle) + OVERBEND),
  });
}

function order(path: PlanarPath, machine: Partial<Machine> = {}): BendOrder & { kind: "order" } {
  const found = ask(path, machine);
  if (isRefusal(found)) throw new Error(refusalText(found));
  if (found.kind === "blocked") {
    throw new Error(found.blocked.map((one) => blockedBendText(one, found.made)).join("; "));
  }
  return found;
}

function blocked(path: PlanarPath, machine: Partial<Machine> = {}): BendOrder & { kind: "blocked" } {
  const found = ask(path, machine);
  if (isRefusal(found)) throw new Error(refusalText(found));
  if (found.kind === "order") throw new Error("an order was found");
  return found;
}

/** Steps of the bar with some bends made and one bent so far, degrees: a second way to lay it out. */
function laid(path: PlanarPath, made: readonly number[], bend: number, bentTo: number): Piece[] {
  const line = centreLine(path, { diameter: D, radius: FORMER / 2 });
  const radius = (FORMER + D) / 2;
  const steps: Step[] = [];
  path.turns.forEach((turn, index) => {
    steps.push({ kind: "straight", length: line.straights[index] as number });
    const arc = line.arcs[index] as number;
    if (made.includes(index + 1)) {
      steps.push({ kind: "arc", radius, angle: (turn.angle * Math.PI) / 180 });
    } else if (index + 1 === bend) {
      const angle = (bentTo * Math.PI) / 180;
      steps.push({ kind: "arc", radius, angle: Math.sign(turn.angle) * angle });
      steps.push({ kind: "straight", length: Math.max(0, arc - angle * radius) });
    } else {
      steps.push({ kind: "straight", length: arc });
    }
  });
  steps.push({ kind: "straight", length: line.straights.at(-1) as number });
  return layOut(steps);
}

/** Least distance between places of the bar that are more than a half circle apart along it, every 6 mm. */
function closest(pieces: readonly Piece[]): number {
  const places: Point[] = [];
  for (const piece of pieces) {
    const count = Math.ceil(lengthOf(piece) / 6);
    for (let at = 0; at < count; at += 1) places.push(pointAlong(piece, at / count));
  }
  const apart = Math.ceil((Math.PI * (FORMER + D)) / 2 / 5);
  let least = Infinity;
  for (let i = 0; i < places.length; i += 1) {
    for (let k = i + apart; k < places.length; k += 1)
      least = Math.min(least, distance(places[i]!, places[k]!));
  }
  return least;
}

const numbers = (bends: readonly OrderedBend[]) => bends.map((step) => step.bend);

describe("bendOrder", () => {
  it("makes an L, a U, a Z and a crank", () => {
    expect(numbers(order(bar([500, 300], [90])).bends)).toEqual([1]);
    expect(numbers(order(bar([600, 400, 600], [90, 90])).bends).sort()).toEqual([1, 2]);
    // opposite senses: from both ends of the bar, or turned over
    for (const turns of [
      [90, -90],
      [30, -30],
    ]) {
      const { bends } = order(bar([500, 400, 500], turns));
      expect(bends[1]?.turnedOver !== bends[1]?.endForEnd).toBe(true);
    }
  });

  it("does not turn a U about: both bends go the same way from the same end", () => {
    expect(order(bar([600, 400, 600], [90, 90]))).toMatchObject({ turnedOver: 0, endForEnd: 0 });
  });

  it("closes a link with its legs passing out of plane at the last corner only", () => {
    const { bends } = order(bar([160, 300, 500, 300, 500, 160], [135, 90, 90, 90, 135]));
    expect(bends).toHaveLength(5);
    const passing = bends.map((step) => step.notes.includes("legs pass out of plane"));
    expect(passing.slice(0, -1)).toEqual([false, false, false, false]);
    expect(passing.at(-1)).toBe(true);
  });

  it("orders a bar of seven bends", () => {
    const path = bar([150, 300, 300, 300, 300, 300, 300, 150], [90, 90, -90, -90, 90, 90, -90]);
    const found = order(path);
    expect(numbers(found.bends).sort()).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(found.swingRadius).toBe(Math.max(...found.bends.map((step) => step.swingRadius)));
  });

  it("should find only orders whose every bend is clear when laid out another way", () => {
    const turn = fc.constantFrom(90, -90, 45, -45, 135, -135);
    const legs = fc.integer({ min: 15, max: 60 }).map((tens) => tens * 10);
    const shapes = fc.array(fc.tuple(legs, turn), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(shapes, legs, (steps, last) => {
        const path = bar(
          [...steps.map(([leg]) => leg), last],
          steps.map(([, angle]) => angle),
        );
        const found = ask(path);
        fc.pre(!isRefusal(found) && found.kind === "order");
        if (isRefusal(found) || found.kind !== "order") return;
        const made: number[] = [];
        for (const step of found.bends) {
          // from there on the made part lies over itself, whatever swings
          if (step.notes.includes("legs pass out of plane")) break;
          const wanted = Math.abs(path.turns[step.bend - 1]?.angle as number);
          for (let bentTo = 0; bentTo <= wanted; bentTo += 3) {
            expect(closest(laid(path, made, step.bend, bentTo))).toBeGreaterThan(D - 0.5);
          }
          made.push(step.bend);
        }
      }),
      { numRuns: 15 },
    );
  });

  it("bends a turn with a radius of its own on its own former, and changes formers no more than it must", () => {
    const plain = bar([600, 500, 600, 500], [90, 90, 90]);
    const radii = [null, 100, null];
    const path = { ...plain, turns: plain.turns.map((turn, at) => ({ ...turn, radius: radii[at] ?? null })) };
    const { bends } = order(path, { orbitRadius: 180 });
    expect(bends.map((step) => [step.bend, step.former]).sort()).toEqual([
      [1, 48],
      [2, 200],
      [3, 48],
    ]);
    // the wide one first or last
    expect(bends[1]?.former).toBe(48);
    // a rack without it
    expect(isRefusal(ask(path, { orbitRadius: 180, formers: [48] }))).toBe(true);
  });

  it("counts the swing from the former to the farthest point", () => {
    // leg 300: straight 264 and arc 47.12 from the line, 30 off the axis, and half a bar
    const { bends } = order(bar([900, 300], [90]));
    expect(bends[0]?.swinging).toBe("last end");
    expect(bends[0]?.swingRadius).toBeCloseTo(Math.hypot(264 + 47.124, 30) + 6, 1);
  });

  it("takes a dearer order before a swing beyond the guard, and says so where there is no other", () => {
    const path = bar([2000, 2000], [90]);
    expect(order(path, { guardRadius: 1500 }).bends[0]?.notes).toEqual(["swing beyond the guard"]);
    expect(order(bar([2000, 400], [90]), { guardRadius: 1500 }).bends[0]).toMatchObject({
      notes: [],
      swinging: "last end",
    });
  });
});

describe("a bar that cannot be bent", () => {
  it("is refused where it is clear before and after a bend but not in the middle of its sweep", () => {
    const path = bar([490, 430, 390, 510], [90, 90, 135]);
    // finished, the bar stays 20 mm clear of itself; so it does with the third bend still straight
    expect(closest(laid(path, [1, 2, 3], 0, 0)) - D).toBeGreaterThan(10);
    expect(closest(laid(path, [1, 2], 3, 0)) - D).toBeGreaterThan(10);
    // half way it crosses
    expect(closest(laid(path, [1, 2], 3, 80))).toBeLessThan(D);
    const found = blocked(path);
    expect(found.made).toEqual([1, 2]);
    const [reason] = found.blocked[0]?.reasons ?? [];
    expect(reason?.obstacle).toBe("swinging part against the held part");
    expect(reason?.at).toBeGreaterThan(60);
    expect(reason?.at).toBeLessThan(90);
    expect(found.blocked.map((one) => blockedBendText(one, found.made))[0]).toMatch(
      /^bend 3 cannot be made after bends 1, 2: swinging part against the held part at \d\d degrees \((first|last) end swinging\)/,
    );
  });

  it("has a leg too short for the pin on one side and for the back-rest on the other", () => {
    // straight 60 - 36 = 24; the pin pushes sqrt(99^2 - 51^2) = 84.9 from the former, and 10 more must stand out
    const found = blocked(bar([60, 400], [90]));
    expect(found.made).toEqual([]);
    expect(blockedBendText(found.blocked[0] as (typeof found.blocked)[0], [])).toBe(
      "bend 1 cannot be made first: held leg shorter than the back-rest's distance (last end swinging); swinging leg shorter than the pin's reach (first end swinging)",
    );
  });

  it("is bent further than the machine turns", () => {
    const found = blocked(bar([500, 400], [180]), { largestAngle: 183 });
    expect(found.blocked[0]?.reasons[0]?.obstacle).toBe("bending beyond the machine's largest angle");
    expect(order(bar([500, 400], [180])).bends).toHaveLength(1);
  });

  it("runs a bend that was made the other way into the back-rest", () => {
    // straight 132 - 72 = 60: the leg that goes down stands 60 + 30 from the line, where the back-rest is
    const found = blocked(bar([400, 132, 400], [90, -90]));
    const reasons = found.blocked.flatMap((one) => one.reasons.map((reason) => reason.obstacle));
    expect(reasons).toContain("held part against the back-rest");
    expect(order(bar([400, 132, 400], [90, 90])).bends).toHaveLength(2);
  });
});

describe("unsure, not a pass", () => {
  it.each([
    ["bends in more than one plane", bar([500, 400, 300], [90, 90], false), {}, /more than one plane/],
    [
      "a pin that is not known",
      bar([500, 400], [90]),
      { pins: null },
      /pin's diameter of M1 is not written down/,
    ],
    ["a back-rest that is not known", bar([500, 400], [90]), { backRestDistance: null }, /back-rest/],
  ])("for %s", (_, path, machine, text) => {
    const found = ask(path, machine);
    expect(isRefusal(found) && found.kind).toBe("not-held");
    expect(isRefusal(found) && refusalText(found)).toMatch(text);
  });

  it("refuses bends that overlap", () => {
    expect(isRefusal(ask(bar([20, 400], [90])))).toBe(true);
  });
});
