import { describe, expect, it } from "vitest";
import { CUTLENGTH } from "../../../core/formulas/cutlength";
import { DEVELOPED } from "../../../core/formulas/developed";
import { ROWMASS } from "../../../core/formulas/rowmass";
import { TONNAGE } from "../../../core/formulas/tonnage";
import type { Cell } from "../../../core/schedule";
import { cutLength } from "../../../core/shapes/cut-length";
import { resolveShape } from "../../../core/shapes/resolve-shape";
import { resolveStandard, STANDARD_IDS, type Standard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";

const DIMS = [[1000, 300, 3945]];
const place = { defaultStandard: "BS8666:2005" };
const errorOf = (cell: Cell | undefined) =>
  typeof cell === "object" && cell !== null ? cell : { error: "", message: "" };

describe("dimensions that contradict each other", () => {
  it("should be named where the printed formula comes out at nought or less", () => {
    // BS 8666:2005 shape 12: A + B - 0.43R - 1.2d = 1000 + 300 - 0.43 x 3945 - 1.2 x 20 = -420.35
    const [[cell] = []] = CUTLENGTH.call([[["12"]], [["H20"]], DIMS], place);
    expect(errorOf(cell).error).toBe("#VALUE!");
    expect(errorOf(cell).message).toContain("R 3945 mm takes away more than A 1000 mm and B 300 mm give");
    const [[mass] = []] = ROWMASS.call([[["12"]], [["H20"]], DIMS, [[10]]], place);
    expect(errorOf(mass).error).toBe("#VALUE!");
    const [[developed] = []] = DEVELOPED.call([[["12"]], [["H20"]], DIMS], place);
    expect(errorOf(developed).error).toBe("#VALUE!");
  });

  it("should give the printed length where that is above nought though the bends overlap", () => {
    // 1000 + 300 - 0.43 x 1000 - 24 = 846, up to the next 25: 850; the legs of 300 do not reach round R 1000
    expect(CUTLENGTH.call([[["12"]], [["H20"]], [[1000, 300, 1000]]], place)).toEqual([[850]]);
    const [[developed] = []] = DEVELOPED.call([[["12"]], [["H20"]], [[1000, 300, 1000]]], place);
    expect(errorOf(developed).error).toBe("#VALUE!");
  });

  it("should give no length of nought or less for any shape of any edition", () => {
    const refused = new Set<string>();
    let state = 7;
    // a plain generator: lengths from 10 to 5,000 mm
    const next = (): number => {
      state = (state * 48_271) % 2_147_483_647;
      return Math.round(10 * 500 ** (state / 2_147_483_647));
    };
    for (const id of STANDARD_IDS) {
      const standard = resolveStandard(id) as Standard;
      for (const [code, { dims }] of standard.shapes) {
        for (let round = 0; round < 150; round += 1) {
          const shape = resolveShape({ standard, shape: code, dims: dims.map(next), diameter: 32 });
          if (isRefusal(shape)) continue;
          const cut = cutLength(shape);
          if (!isRefusal(cut)) expect(cut.length, `${id} ${code}`).toBeGreaterThan(0);
          else if (cut.code === "dimensions-contradict") refused.add(`${id} ${code}`);
        }
      }
    }
    expect(refused.size).toBeGreaterThanOrEqual(25);
  });

  it("should refuse tonnes that no cell holds", () => {
    const block = TONNAGE.call(
      [[["P1"], ["P1"]], [["H16"], ["H16"]], [[1.7e308], [1.7e308]], [["lb"]]],
      place,
    );
    for (const row of block.slice(1)) {
      for (const cell of row.slice(1)) expect(errorOf(cell).error).toBe("#VALUE!");
    }
  });
});
