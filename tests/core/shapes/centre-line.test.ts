import { describe, expect, it } from "vitest";
import { centreLine, setBack } from "../../../core/shapes/centre-line";
import type { PlanarPath } from "../../../core/shapes/path";

function bar(legs: readonly number[], turns: readonly number[]): PlanarPath {
  return {
    kind: "planar",
    legs: legs.map((length, index) => ({ length, free: index === legs.length - 1, letter: null })),
    turns: turns.map((angle) => ({ angle, radius: null })),
    inOnePlane: true,
  };
}

describe("setBack", () => {
  it("runs to the meeting of the outside tangents up to 90 and to the extreme above", () => {
    expect(setBack(90, 32, 16)).toBeCloseTo(48, 10);
    // 48 tan 22.5 = 48 x 0.414214
    expect(setBack(45, 32, 16)).toBeCloseTo(19.8823, 4);
    expect(setBack(135, 32, 16)).toBe(48);
    expect(setBack(180, 32, 16)).toBe(48);
  });
});

describe("centreLine", () => {
  it("gives an L of 600 x 400, 16 mm, former 64", () => {
    const line = centreLine(bar([600, 400], [90]), { diameter: 16, radius: 32 });
    // 600 - 48, 400 - 48, quarter of a circle of 40: 62.832
    expect(line.straights).toEqual([552, 352].map((value) => expect.closeTo(value, 9)));
    expect(line.developed).toBeCloseTo(552 + 352 + 62.832, 3);
  });

  it("deducts 2 1/2 in from an 8 bar bent to a right angle about a former of 6 in", () => {
    // published: ACI-style bend deduction for a No. 8 bar, 90 degrees, 6d former: 2-1/2 in, printed to the 1/4
    const line = centreLine(bar([20, 20], [90]), { diameter: 1, radius: 3 });
    expect(40 - line.developed).toBeCloseTo(2.5, 1);
  });

  it("measures a leg to the far side of a half circle", () => {
    // 3000 - 48, 150 - 48, half a circle of 40
    const line = centreLine(bar([3000, 150], [180]), { diameter: 16, radius: 32 });
    expect(line.developed).toBeCloseTo(2952 + 102 + Math.PI * 40, 9);
  });

  it("lays a U so that its legs stand as far apart as its base is wide", () => {
    const line = centreLine(bar([600, 400, 600], [90, 90]), { diameter: 12, radius: 24 });
    const end = line.pieces.at(-1)?.to;
    // outside 400, so 388 between the centre lines; equal legs end where the first began
    expect(end?.x).toBeCloseTo(0, 6);
    expect(end?.y).toBeCloseTo(388, 6);
  });

  it("keeps a turn's own radius before the one in force", () => {
    const path: PlanarPath = { ...bar([600, 400], [90]), turns: [{ angle: -90, radius: 60 }] };
    const line = centreLine(path, { diameter: 16, radius: 32 });
    expect(line.straights[0]).toBeCloseTo(600 - 76, 9);
    expect(line.arcs[0]).toBeCloseTo((Math.PI / 2) * 68, 9);
  });

  it("shows overlapping bends as a negative straight", () => {
    expect(centreLine(bar([300, 80, 300], [90, 90]), { diameter: 16, radius: 32 }).straights[1]).toBeCloseTo(
      -16,
      9,
    );
  });
});
