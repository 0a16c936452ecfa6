import { describe, expect, it } from "vitest";
import { MARKS } from "../../../core/formulas/marks";
import {
  courseCite,
  courseNote,
  courseTrust,
  courseWarning,
  hasUnsureAngles,
} from "../../../core/shapes/course";
import { cutLength } from "../../../core/shapes/cut-length";
import { derivation } from "../../../core/shapes/derivation";
import { isRefusal } from "../../../core/units/refusal";
import { resolved, standardNamed } from "./resolved";

const shape = (code: string) => standardNamed("BS8666:2005").shapes.get(code)!;
const bar = (code: string, dims: number[], diameter = 12) =>
  resolved({ standard: "BS8666:2005", shape: code, diameter, dims });
const marks = (code: string, dims: number[]) =>
  MARKS.call([[[code]], [["H12"]], [dims]], { defaultStandard: "BS8666:2005" });

// no page with the drawings of BS 8666 was seen; its formulas and limits were read in several reproductions
describe("the course of a code apart from its formula", () => {
  it("is recalled where the formula was read", () => {
    for (const code of ["11", "21", "26", "46", "51"]) {
      expect([code, shape(code).cite.provenance]).toEqual([code, "published"]);
      expect([code, courseCite(shape(code)).provenance]).toEqual([code, "memory"]);
      expect([code, courseTrust(shape(code))]).toEqual([code, "recalled"]);
    }
  });

  it("is in doubt where the drawing bears another reading", () => {
    const doubted = [...standardNamed("BS8666:2005").shapes.values()]
      .filter((definition) => courseTrust(definition) === "in doubt")
      .map(({ code }) => code);
    expect(doubted).toEqual(["14", "15", "24", "27", "28", "29", "56", "64"]);
  });

  it("is sure of a straight bar, a ring and a helix, which their formulas say", () => {
    for (const code of ["00", "01", "67", "75", "77", "99"]) {
      expect([code, courseNote(shape(code))]).toEqual([code, null]);
    }
  });

  it("warns of angles that follow from it, not of right angles that the formula counts", () => {
    expect(courseWarning(bar("21", [400, 300, 400]))).toBeNull();
    expect(hasUnsureAngles(shape("21"))).toBe(false);
    expect(courseWarning(bar("26", [400, 1000, 400, 200]))).toBe(
      "course of shape 26 recalled: compare with the drawing before bending",
    );
  });

  it("names the other reading of code 27 with its angle", () => {
    // A 400 rising D 200: sin t = (200 - 12 cos t) / 400 gives 28.6 (0.478 x 400 + 0.878 x 12 = 201.8); by
    // B 1000: sin t = 200 / 1000 gives 11.5
    const warning = courseWarning(bar("27", [400, 1000, 400, 200])) ?? "";
    expect(warning).toContain("course of shape 27 in doubt: compare with the drawing before bending");
    expect(warning).toContain("read with B as the leg that slopes the slope turns 11.5 degrees");
    const lines = derivation(bar("27", [400, 1000, 400, 200]));
    expect(lines.find((line) => line.startsWith("course: "))).toBe(
      "course: in doubt; BS 8666:2005, Table 3, drawings, code 27 (memory)",
    );
    expect(lines.find((line) => line.startsWith("angle t"))).toMatch(/D = A sin t \+ d cos t gives 28\.\d/);
  });

  it("gives no stop for a code in doubt, and marks the angles of a recalled one", () => {
    const [[refused]] = marks("27", [400, 1000, 400, 200]) as [[{ error: string; message: string }]];
    expect(refused.error).toBe("#N/A");
    expect(refused.message).toContain(
      "no stop is given; write the bar as a path, or confirm the drawing of shape 27",
    );
    const [header, first] = marks("26", [400, 1000, 400, 200]);
    expect(header?.at(-1)).toBe("course");
    expect(first?.at(-1)).toBe("course recalled: compare with the drawing");
    expect(marks("21", [400, 300, 400])[0]).toHaveLength(8);
  });
});

describe("ends that the printed formula takes as one", () => {
  it("go by geometry where they differ", () => {
    // 51, H12, r 24: 2(600 + 400) + 130 + 140 + 5 bends of (0.5 pi 30 - 2 x 36) = 2270 - 124.4 = 2145.6
    const unequal = cutLength(bar("51", [600, 400, 130, 140]));
    expect(isRefusal(unequal)).toBe(false);
    expect(unequal).toMatchObject({ basis: "geometry", length: 2150, formula: null });
    // equal: 2(600 + 400 + 130) - 2.5 x 24 - 5 x 12 = 2140
    expect(cutLength(bar("51", [600, 400, 130, 130]))).toMatchObject({
      basis: "printed formula",
      unrounded: 2140,
    });
    const lines = derivation(bar("51", [600, 400, 130, 140]));
    expect(lines).toContain(
      "printed formula: 2(A + B + (C)) - 2.5r - 5d is for (C) = (D) only, so the cut length goes by geometry",
    );
  });
});
