import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BendMark, type BendMarksInput, bendMarks } from "../../../core/bending/bend-marks";
import { centreLine } from "../../../core/shapes/centre-line";
import type { PlanarPath } from "../../../core/shapes/path";
import { isRefusal, refusalText } from "../../../core/units/refusal";

function bar(legs: readonly number[], turns: readonly number[], free = legs.length - 1): PlanarPath {
  return {
    kind: "planar",
    legs: legs.map((length, index) => ({ length, free: index === free, letter: null })),
    turns: turns.map((angle) => ({ angle, radius: null })),
    inOnePlane: true,
  };
}

function marks(input: BendMarksInput): readonly BendMark[] {
  const found = bendMarks(input);
  if (isRefusal(found)) throw new Error(refusalText(found));
  return found;
}

/** Start, middle, end of each bend to a tenth. */
const places = (found: readonly BendMark[]) =>
  found.map(({ start, middle, end }) => [start, middle, end].map((value) => Math.round(value * 10) / 10));
const ARC = Math.PI / 2;

/** Hand sums: set-back 90 is r + d; arc is angle x (r + d/2). All derived. */
describe("five bars worked by hand", () => {
  it("an L of 600 x 400, 16 mm on 64", () => {
    // 600 - 48 = 552; arc 1.5708 x 40 = 62.83; cut 975, developed 966.8: 8.2 more in the last leg
    const [one] = marks({ path: bar([600, 400], [90]), diameter: 16, radius: 32, cutLength: 975 });
    expect(one?.start).toBeCloseTo(552, 9);
    expect(one?.middle).toBeCloseTo(552 + 31.416, 3);
    expect(one?.end).toBeCloseTo(552 + 62.832, 3);
    expect(one?.fromHeld).toEqual({ distance: 552, fromBend: null, face: false });
    expect(one?.fromSwinging.distance).toBeCloseTo(975 - 552, 9);
  });

  it("a U of 600, 400, 600, 12 mm on 48", () => {
    // straights 564, 328, 564; arc 1.5708 x 30 = 47.12
    const found = marks({ path: bar([600, 400, 600], [90, 90]), diameter: 12, radius: 24, cutLength: 1575 });
    expect(places(found)).toEqual([
      [564, 587.6, 611.1],
      [939.1, 962.7, 986.2],
    ]);
    // from the first bend's outside face: 328 + r + d = 364
    expect(found[1]?.fromHeld).toEqual({ distance: expect.closeTo(364, 9), fromBend: 1, face: true });
    expect(found[1]?.fromSwinging.distance).toBeCloseTo(1575 - 939.1239, 4);
  });

  it("a link of 300 x 500 with hooks of 100 at 135, 10 mm on 40", () => {
    // set-back 30 at every bend (135: r + d = 30); straights 70, 440, 240, 440, 240, 70
    // arcs 2.3562 x 25 = 58.90 and 1.5708 x 25 = 39.27
    const path = bar([100, 500, 300, 500, 300, 100], [135, 90, 90, 90, 135]);
    const found = marks({ path, diameter: 10, radius: 20, cutLength: 1750 });
    const starts = [
      70,
      70 + 58.905 + 440,
      568.905 + 39.27 + 240,
      848.175 + 39.27 + 440,
      1327.445 + 39.27 + 240,
    ];
    found.forEach((mark, index) => {
      expect(mark.start).toBeCloseTo(starts[index] as number, 2);
      expect(mark.end - mark.start).toBeCloseTo(index === 0 || index === 4 ? 58.905 : 39.27, 2);
    });
    // bend 3 from the outside face of bend 2: 240 + 30
    expect(found[2]?.fromHeld).toMatchObject({ distance: expect.closeTo(270, 9), fromBend: 2 });
  });

  it("an L of 1500 x 800, 32 mm on 224, from either side", () => {
    // 1500 - 144 = 1356; arc 1.5708 x 128 = 201.06; developed 1356 + 201.06 + 656 = 2213.06
    const input = {
      path: bar([1500, 800], [90]),
      diameter: 32,
      radius: 112,
      cutLength: 1356 + ARC * 128 + 656,
    };
    const [held] = marks(input);
    expect(held?.fromHeld.distance).toBeCloseTo(1356, 9);
    expect(held?.fromSwinging.distance).toBeCloseTo(857.06, 2);
    // end for end: the 800 end is held and the machine's line is where the bend ends
    const [turned] = marks({ ...input, order: [{ bend: 1, swinging: "first end" }] });
    expect(turned?.fromHeld.distance).toBeCloseTo(656, 9);
    expect(turned?.fromSwinging.distance).toBeCloseTo(1356 + 201.06, 2);
  });

  it("a crank of 1000, 300, 900 at 45, 20 mm on 140, with the free leg first", () => {
    // set-back 90 tan 22.5 = 37.279; straights 962.721, 225.442, 862.721; arc 0.7854 x 80 = 62.832
    // developed 962.721 + 225.442 + 862.721 + 125.664 = 2176.548; cut 2200 puts 23.452 into leg 1
    const path = bar([1000, 300, 900], [45, -45], 0);
    const found = marks({ path, diameter: 20, radius: 70, cutLength: 2200 });
    expect(found[0]?.start).toBeCloseTo(986.17, 2);
    expect(found[1]?.start).toBeCloseTo(986.17 + 62.83 + 225.44, 1);
    expect(found.map((mark) => mark.turn)).toEqual([45, -45]);
    // a turn below 90 has no face: to where the outside tangents meet, 225.442 + 37.279
    expect(found[1]?.fromHeld).toEqual({ distance: expect.closeTo(262.721, 3), fromBend: 1, face: false });
  });
});

describe("bendMarks", () => {
  it("measures from the nearest bend made before on each side, in working order", () => {
    const path = bar([300, 400, 500, 300], [90, 90, 90]);
    const order = [
      { bend: 1, swinging: "first end" },
      { bend: 3, swinging: "last end" },
      { bend: 2, swinging: "last end" },
    ] as const;
    const found = marks({ path, diameter: 12, radius: 24, cutLength: 1400, order });
    expect(found.map((mark) => mark.bend)).toEqual([1, 2, 3]);
    // bend 3 from bend 1's face over the unbent bend 2: 328 + 47.12 + 428 + 36
    expect(found[2]?.fromHeld).toMatchObject({ distance: expect.closeTo(839.124, 3), fromBend: 1 });
    // bend 2, line at its start: 47.12 + 428 + 36 to bend 3's face
    expect(found[1]?.fromSwinging).toMatchObject({ distance: expect.closeTo(511.124, 3), fromBend: 3 });
    expect(found[1]?.fromHeld).toMatchObject({ distance: expect.closeTo(364, 3), fromBend: 1 });
  });

  it("should put both stops of a first bend on the same line and add up to the bar", () => {
    const legs = fc.array(fc.integer({ min: 250, max: 3000 }), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(
        legs,
        fc.integer({ min: 10, max: 170 }),
        fc.integer({ min: 0, max: 40 }),
        (lengths, angle, surplus) => {
          const path = bar(
            lengths,
            lengths.slice(1).map(() => angle),
          );
          const { developed } = centreLine(path, { diameter: 16, radius: 32 });
          const found = marks({ path, diameter: 16, radius: 32, cutLength: developed + surplus });
          const first = found[0] as BendMark;
          const last = found.at(-1) as BendMark;
          expect(first.fromHeld.distance + first.fromSwinging.distance).toBeCloseTo(developed + surplus, 6);
          // what is left behind the last bend is the free leg's straight and the surplus
          const straight = centreLine(path, { diameter: 16, radius: 32 }).straights.at(-1) as number;
          expect(developed + surplus - last.end).toBeCloseTo(straight + surplus, 6);
        },
      ),
    );
  });

  it("refuses bends that overlap, with leg and remedy", () => {
    const found = bendMarks({
      path: bar([300, 80, 300], [90, 90]),
      diameter: 16,
      radius: 32,
      cutLength: 700,
    });
    expect(isRefusal(found) && refusalText(found)).toBe(
      "leg 2 of 80 leaves a straight of -16 between its bends, which overlap: lengthen it by 16 or take a smaller former",
    );
  });

  it("refuses a negative leg as one that overlaps", () => {
    expect(
      isRefusal(bendMarks({ path: bar([-300, 400], [90]), diameter: 16, radius: 32, cutLength: 100 })),
    ).toBe(true);
  });

  it("refuses a cut that uses the free leg up", () => {
    const found = bendMarks({ path: bar([600, 400], [90]), diameter: 16, radius: 32, cutLength: 600 });
    expect(isRefusal(found) && refusalText(found)).toMatch(
      /cut length of 600 is below the developed length of 966.8/,
    );
  });
});
