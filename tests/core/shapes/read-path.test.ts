import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { developedLength } from "../../../core/shapes/developed-length";
import type { PlanarPath } from "../../../core/shapes/path";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { asked, resolved } from "./resolved";

function pathOf(
  text: string,
  more: { standard?: string; diameter?: number; use?: string; former?: number } = {},
) {
  return resolved({ shape: text, diameter: 16, dims: [], ...more }).path as PlanarPath;
}

function refusalOf(text: string, standard = "BS8666:2005"): string {
  const answer = asked({ standard, shape: text, diameter: 16, dims: [] });
  return isRefusal(answer) ? `${answer.kind}: ${refusalText(answer)}` : "no refusal";
}

describe("readPath", () => {
  it("reads legs and signed turns; the last leg is free", () => {
    expect(pathOf("500 +90 1200 -45 300")).toEqual({
      kind: "planar",
      inOnePlane: true,
      legs: [
        { length: 500, free: false, letter: null },
        { length: 1200, free: false, letter: null },
        { length: 300, free: true, letter: null },
      ],
      turns: [
        { angle: 90, radius: null },
        { angle: -45, radius: null },
      ],
    });
  });

  it("reads a radius of its own and the free leg in parentheses", () => {
    const { legs, turns } = pathOf("(450) +90r60 300.5 -22.5 200");
    expect(turns[0]).toEqual({ angle: 90, radius: 60 });
    expect(turns[1]).toEqual({ angle: -22.5, radius: null });
    expect(legs.map((leg) => leg.free)).toEqual([true, false, false]);
    expect(legs[1]?.length).toBe(300.5);
  });

  it("reads units in legs and radii", () => {
    const { legs, turns } = pathOf(`16in +90r2in 3'-4.5"`);
    expect(legs.map((leg) => leg.length)).toEqual([406.4, 1028.7]);
    expect(turns[0]?.radius).toBe(50.8);
    expect(pathOf("1.2m +90 450mm").legs.map((leg) => leg.length)).toEqual([1200, 450]);
  });

  it("takes plain numbers in the standard's unit", () => {
    expect(pathOf("10 +90r2 20", { standard: "ACI318:2019" }).legs.map((leg) => leg.length)).toEqual([
      254, 508,
    ]);
    expect(pathOf("10 +90r2 20", { standard: "ACI318:2019" }).turns[0]?.radius).toBe(50.8);
  });

  it("makes end hooks into legs and turns, a leading - reversing them", () => {
    const { legs, turns } = pathOf("hook90 600 -hook180");
    expect(turns.map((turn) => turn.angle)).toEqual([90, -180]);
    expect(legs).toHaveLength(3);
    expect(legs.map((leg) => leg.free)).toEqual([false, true, false]);
    expect(legs[0]?.hook?.turn).toBe(90);
  });

  it("gives the ACI 180 hook its 2.5 in tail: #4, 3 in bend, straight max(4 db, 2.5 in)", () => {
    // ACI 318-19 Table 25.3.1; overall = straight + r + d = 2.5 + 1.5 + 0.5 = 4.5 in
    const { legs, turns } = pathOf("hook180 60", { standard: "ACI318:2019", diameter: 12.7 });
    expect(legs[0]?.length).toBeCloseTo(4.5 * 25.4, 9);
    expect(turns[0]?.radius).toBeCloseTo(1.5 * 25.4, 9);
  });

  it("takes the stirrup hook for use link", () => {
    // ACI 318-19 Table 25.3.2, #4: 135 hook, 4 db bend, extension max(6 db, 3 in) = 3 in; 3 + 1 + 0.5
    const { legs, turns } = pathOf("hook135 20 +90 10", {
      standard: "ACI318:2019",
      diameter: 12.7,
      use: "link",
    });
    expect(legs[0]?.length).toBeCloseTo(4.5 * 25.4, 9);
    expect(turns[0]?.radius).toBeCloseTo(25.4, 9);
  });

  it("bends hooks about a former that is given", () => {
    expect(pathOf("hook90 600", { former: 100 }).turns[0]?.radius).toBeNull();
    const length = (former: number) => pathOf("hook90 600", { former }).legs[0]!.length;
    expect(length(120) - length(100)).toBeCloseTo(10, 9);
  });

  it.each([
    ["500 +90", `has no leg after "+90"`],
    ["+90 500", `has no leg before "+90"`],
    ["500 +90 +90 300", `has no leg before "+90"`],
    ["500 300 +90 200", `has no turn between "500" and "300"`],
    ["500 +0 300", "is 0 degrees: a turn is over 0 and at most 180"],
    ["500 +181 300", "is 181 degrees"],
    ["500 +9o 300", `"+9o" of the path "500 +9o 300" is no turn`],
    ["500 +90rx 300", "write its inside radius as a length over 0 after r"],
    ["500 +90r0 300", "has an inside radius of 0"],
    ["5oo +90 300", `"5oo" of the path "5oo +90 300" is no leg`],
    ["0 +90 300", `leg "0"`],
    ["(500) +90 (300)", "has 2 legs in parentheses"],
    ["500 +90 hook90 +90 300", `"hook90" stands inside the path`],
    ["hook90 500 +90 hook45", `"hook45" of the path`],
    ["hook90 hook90", "has no leg between its hooks"],
    ["hook90", "has no leg between its hooks"],
    ["hook90 +90 500", `has no leg before "+90"`],
    ["500 + 90 300", `"+" of the path`],
  ])("refuses %s by its part", (text, words) => {
    const refusal = refusalOf(text);
    expect(refusal).toContain(words);
    expect(refusal).toMatch(/^value: /);
  });

  it("is no path without a turn or a hook, but a code", () => {
    expect(refusalOf("500 1200")).toMatch(/^not-held: shape "500 1200" is no code of BS8666:2005/);
  });

  it("refuses dims beside a path", () => {
    const answer = asked({ shape: "500 +90 300", diameter: 16, dims: [500] });
    expect(isRefusal(answer) && refusalText(answer)).toContain("leave the dims empty");
    expect(isRefusal(asked({ shape: "500 +90 300", diameter: 16, dims: [null, 0, null] }))).toBe(false);
  });
});

describe("developedLength of paths", () => {
  /** Worked by hand from straights and arcs (derived), mm: path, d, former, straights, developed. */
  it.each([
    ["600 +90 400", 16, 64, [552, 352], 966.8],
    ["600 +90 400 +90 600", 12, 48, [564, 328, 564], 1550.2],
    ["100 +135 500 +90 300 +90 500 +90 300 +135 100", 10, 40, [70, 440, 240, 440, 240, 70], 1735.6],
    ["1500 +90 800", 32, 224, [1356, 656], 2213.1],
  ])("%s of a %d mm bar about %d", (shape, diameter, former, straights, expected) => {
    const developed = developedLength(resolved({ shape, diameter, former, dims: [] }));
    if (isRefusal(developed)) throw new Error(refusalText(developed));
    expect(developed.length).toBeCloseTo(expected, 1);
    for (const [at, straight] of straights.entries())
      expect(developed.straights[at]).toBeCloseTo(straight, 9);
  });

  it("takes 2-1/2 in off a 90 degree bend of #8 about 6 d, as US practice deducts", () => {
    // common practice of US shops: 2-1/2 in for #8; geometry gives 2.502 in
    const developed = developedLength(
      resolved({ standard: "ACI318:2019", shape: "40 +90 30", diameter: 25.4, dims: [] }),
    );
    if (isRefusal(developed)) throw new Error(refusalText(developed));
    expect(70 - developed.length / 25.4).toBeCloseTo(2.5, 2);
  });

  it("names the bends that overlap and the end that lies inside a bend", () => {
    const overlap = developedLength(resolved({ shape: "500 +90 80 +90 500", diameter: 16, dims: [] }));
    expect(isRefusal(overlap) && refusalText(overlap)).toContain(
      "bends 1 and 2 overlap: leg 2 of 80 mm leaves -16 mm",
    );
    const inside = developedLength(resolved({ shape: "500 +90 40", diameter: 16, dims: [] }));
    expect(isRefusal(inside) && refusalText(inside)).toContain(
      "leg 2 of 40 mm ends inside bend 1: lengthen it by 8 mm",
    );
  });

  it("lets a straight of exactly nothing pass", () => {
    const developed = developedLength(resolved({ shape: "500 +90 96 +90 500", diameter: 16, dims: [] }));
    expect(developed).toMatchObject({ straights: [452, expect.closeTo(0, 9), 452] });
  });

  const path = fc
    .array(fc.tuple(fc.integer({ min: -180, max: 180 }), fc.integer({ min: 500, max: 5000 })), {
      minLength: 1,
      maxLength: 8,
    })
    .map((parts) => parts.map(([angle, leg]) => [angle === 0 ? 1 : angle, leg] as const));
  const turnText = (angle: number) => (angle < 0 ? `${angle}` : `+${angle}`);
  const lengthOf = (shape: string) => {
    const developed = developedLength(resolved({ shape, diameter: 12, dims: [] }));
    if (isRefusal(developed)) throw new Error(refusalText(developed));
    return developed;
  };

  it("should be the same from either end and for either sense", () => {
    fc.assert(
      fc.property(path, (parts) => {
        const forward = ["600", ...parts.flatMap(([angle, leg]) => [turnText(angle), `${leg}`])];
        const mirrored = ["600", ...parts.flatMap(([angle, leg]) => [turnText(-angle), `${leg}`])];
        const { length } = lengthOf(forward.join(" "));
        expect(lengthOf([...forward].reverse().join(" ")).length).toBeCloseTo(length, 6);
        expect(lengthOf(mirrored.join(" ")).length).toBeCloseTo(length, 6);
      }),
    );
  });

  it("should be the sum of its straights and arcs, and grow by what a leg grows", () => {
    fc.assert(
      fc.property(path, fc.integer({ min: 1, max: 900 }), (parts, more) => {
        const rest = parts.flatMap(([angle, leg]) => [turnText(angle), `${leg}`]).join(" ");
        const developed = lengthOf(`600 ${rest}`);
        const sum = [...developed.straights, ...developed.arcs].reduce((a, b) => a + b, 0);
        expect(developed.length).toBeCloseTo(sum, 6);
        expect(lengthOf(`${600 + more} ${rest}`).length - developed.length).toBeCloseTo(more, 6);
      }),
    );
  });
});
