import { describe, expect, it } from "vitest";
import { cutLength } from "../../../core/shapes/cut-length";
import { derivation } from "../../../core/shapes/derivation";
import { exactLengthOf } from "../../../core/shapes/exact-length";
import { resolveShape } from "../../../core/shapes/resolve-shape";
import { answered, heldStandard } from "../../_support/held-standard";

const STANDARD = heldStandard("BS4466:1989");

function bar(shape: string, diameter: number, dims: readonly number[], grade?: string) {
  return answered(resolveShape({ standard: STANDARD, shape, dims, diameter, grade }));
}

describe("BS 4466:1989", () => {
  // the formulas of scribd 467122400, kbrebar.co.uk/bs-4466 and rsj-steels.co.uk, worked out by hand; r 3d up to
  // 20 mm and 4d above for grade 460, 2d for grade 250, h and n, and the step of 25 mm from memory
  it.each([
    // 1000 + h 180
    ["32", 16, "T", [1000], 1180, 1200],
    // 1000 + n 230
    ["34", 32, "T", [1000], 1230, 1250],
    // 1000 + n 100
    ["34", 16, "R", [1000], 1100, 1100],
    // 500 + 400 - 24 - 16
    ["37", 16, "T", [500, 400], 860, 875],
    // 500 + 400 - 16 - 16: grade 250
    ["37", 16, "R", [500, 400], 868, 875],
    // 1000 + 400 + 500 - 100 - 50
    ["38", 25, "T", [1000, 400, 500], 1750, 1750],
    // 1000 + 0.57 x 300 + 500 - 1.57 x 20
    ["39", 20, "T", [1000, 300, 500], 1639.6, 1650],
    // 600 + 500 - 100 - 16
    ["51", 16, "T", [600, 500, 200], 984, 1000],
    // 2(400 + 300) + 120
    ["61", 10, "T", [400, 300], 1520, 1525],
    // 2 x 500 + 300 + 200
    ["77", 10, "R", [500, 300], 1500, 1500],
    // 1000 + 900 + 180
    ["82", 10, "T", [500, 300], 2080, 2100],
  ])("code %s of a %i mm %s bar", (code, diameter, grade, dims, unrounded, length) => {
    const cut = answered(cutLength(bar(code, diameter, dims, grade)));
    expect(cut.unrounded).toBeCloseTo(unrounded, 6);
    expect(cut.length).toBe(length);
  });

  // what h and n stand for is laid as a bend with what is left of straight: the bar is as long as the formula says
  it.each([
    ["32", 1000 + 180],
    ["33", 1000 + 2 * 180],
    ["34", 1000 + 100],
    ["35", 1000 + 2 * 100],
  ])("code %s is laid with ends as long as the document allows", (code, length) => {
    const shape = bar(code, 16, [1000], "T");
    expect(exactLengthOf(shape)).toBeCloseTo(length, 6);
    expect(shape.path?.kind).toBe("planar");
  });

  it("says where a formula is from, and that h, n and the way of the bar are recalled", () => {
    const lines = derivation(bar("34", 16, [1000], "T")).join("\n");
    expect(lines).toContain("A + n; BS 4466:1989, Tables 1 and 2 (published)");
    expect(lines).toContain("n of a bend 100 mm; BS 4466:1989, Table 3");
    expect(lines).toContain("course: recalled");
  });

  it("prices a shape whose drawing is not held, and draws none", () => {
    const link = bar("61", 10, [400, 300], "T");
    expect(answered(cutLength(link)).length).toBe(1525);
    expect(link.path).toBeNull();
  });
});
