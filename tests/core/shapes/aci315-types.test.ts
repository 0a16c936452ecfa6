import { describe, expect, it } from "vitest";
import { courseTrust, courseWarning } from "../../../core/shapes/course";
import { derivation } from "../../../core/shapes/derivation";
import { developedLength } from "../../../core/shapes/developed-length";
import { otherReading } from "../../../core/shapes/other-reading";
import { type ResolvedShape, resolveShape } from "../../../core/shapes/resolve-shape";
import { shapeLimits } from "../../../core/shapes/shape-limits";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { heldStandard } from "../../_support/held-standard";

const IN = 25.4;
type Legs = Readonly<Partial<Record<"A" | "B" | "C" | "D" | "E" | "F" | "G", number>>>;

function asked(shape: string, inches: number, legs: Legs) {
  const dims = [..."ABCDEFG"].map((letter) => {
    const leg = legs[letter as keyof Legs];
    return leg === undefined ? null : leg * IN;
  });
  return resolveShape({ standard: heldStandard("ACI318:2019"), shape, dims, diameter: inches * IN });
}

function bar(shape: string, inches: number, legs: Legs): ResolvedShape {
  const answer = asked(shape, inches, legs);
  if (isRefusal(answer)) throw new Error(refusalText(answer));
  return answer;
}

function inches(shape: ResolvedShape): number {
  const developed = developedLength(shape);
  return isRefusal(developed) ? Number.NaN : developed.length / IN;
}

/** What a right angle takes from the sum of two legs, in: 2 (r + d) - pi / 2 (r + d / 2), by hand. */
const rightAngle = (r: number, d: number): number => 2 * (r + d) - (Math.PI / 2) * (r + d / 2);

describe("bar types of ACI 315", () => {
  // ACI 315-99 3.7.4.2 and note 1 to Fig. 10, muhaz.org: A and G of hooks of 180 and 135 degrees are the bar that
  // the hook adds, all else is out to out
  it.each<[string, number, Legs, number]>([
    ["1", 1, { A: 11, B: 120 }, 131],
    ["1", 1, { B: 120, G: 11 }, 131],
    ["1", 1, { A: 11, B: 120, G: 11 }, 142],
    ["2", 1, { A: 16, B: 104 }, 120 - rightAngle(3, 1)],
    ["2", 1, { A: 16, B: 104, G: 16 }, 136 - 2 * rightAngle(3, 1)],
    ["17", 0.75, { B: 30, C: 24 }, 54 - rightAngle(2.25, 0.75)],
    ["17", 0.75, { A: 30, B: 24 }, 54 - rightAngle(2.25, 0.75)],
    ["17", 0.75, { A: 12, B: 30, C: 24 }, 66 - 2 * rightAngle(2.25, 0.75)],
    // as lists of US yards fill it in (common practice)
    ["17", 0.75, { B: 12, C: 30, D: 24 }, 66 - 2 * rightAngle(2.25, 0.75)],
    ["T1", 0.5, { A: 4.5, B: 19, C: 12, D: 19, E: 12, G: 4.5 }, 71 - 3 * rightAngle(1, 0.5)],
    ["T2", 0.5, { A: 4.5, B: 19, C: 12, D: 19, E: 12, G: 4.5 }, 71 - 5 * rightAngle(1, 0.5)],
    ["T5", 0.5, { A: 5, B: 22, G: 5 }, 32],
    ["T9", 0.5, { A: 4.5, B: 22, G: 4.5 }, 31 - rightAngle(1, 0.5)],
    ["S1", 0.5, { A: 4.5, B: 24, C: 14, D: 24, G: 4.5 }, 71 - 2 * rightAngle(1, 0.5)],
    ["S2", 0.5, { A: 4.5, B: 24, C: 14, D: 24, G: 4.5 }, 71 - 4 * rightAngle(1, 0.5)],
  ])("type %s of %f in with %o is %f in along its centre", (type, d, legs, length) => {
    expect(inches(bar(type, d, legs))).toBeCloseTo(length, 9);
  });

  it("holds opposite sides of a closed tie alike: geometry of a rectangle", () => {
    const sides = (C: number) => bar("T1", 0.5, { A: 4.5, B: 19, C, D: 19, E: 12, G: 4.5 });
    const broken = (C: number) => shapeLimits(sides(C)).filter(({ met }) => met === false);
    expect(broken(12)).toEqual([]);
    expect(broken(14).map(({ text, cite }) => [text, cite?.provenance])).toEqual([["C = E", "memory"]]);
  });

  it("asks for an end where none is given, and for letters that the type has not", () => {
    expect(refusalText(asked("2", 1, { B: 104 }) as never)).toBe(
      "A is blank, and code 2 needs A, B, G: give A",
    );
    expect(refusalText(asked("2", 1, { A: 16, B: 104, C: 12 }) as never)).toContain(
      "code 2 takes A, B, G only",
    );
    expect(refusalText(asked("17", 1, { A: 16 }) as never)).toContain("B is blank");
  });

  it("says of each course that it is recalled, and where it is in doubt what else it may be", () => {
    const { shapes } = heldStandard("ACI318:2019");
    const trust = [...shapes.values()].map((one) => `${one.code} ${courseTrust(one)}`);
    expect(trust).toEqual([
      "00 sure",
      ...["1 in doubt", "2 recalled", "17 in doubt", "S1 in doubt", "S2 in doubt"],
      ...["T1 recalled", "T2 in doubt", "T5 in doubt", "T9 in doubt"],
    ]);
    // type 1 with a right angle at its one end
    const other = otherReading(bar("1", 1, { A: 16, B: 104 }));
    expect((other?.length ?? 0) / IN).toBeCloseTo(120 - rightAngle(3, 1), 9);
    const stirrup = bar("S1", 0.5, { A: 4.5, B: 24, C: 14, D: 24, G: 4.5 });
    // the same legs with hooks of 90: four right angles
    expect((otherReading(stirrup)?.length ?? 0) / IN).toBeCloseTo(71 - 4 * rightAngle(1, 0.5), 9);
    expect(courseWarning(stirrup)).toMatch(
      /^course of shape S1 in doubt: compare with the drawing before bending; .*hooks of 90 degrees$/,
    );
    expect(derivation(stirrup).join("\n")).toContain(
      "course: in doubt; ACI 315:1999, Fig. 10, typical bar bends, code S1 (memory)",
    );
  });
});
