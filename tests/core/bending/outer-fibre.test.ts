import { describe, expect, it } from "vitest";
import { outerFibre } from "../../../core/bending/outer-fibre";

describe("outerFibre", () => {
  it.each([
    // d / (D + d): 4 d 20 %, 7 d 12.5 %; over 2.5, 5 and 7.5 %
    [16, 4, "A", 8, "watch"],
    [16, 4, "B", 4, "normal"],
    [25, 4, "B", 4, "watch"],
    [16, 4, "C", 2.667, "normal"],
    [32, 7, "B", 2.5, "normal"],
    [8, 3, "A", 10, "do not bend"],
  ] as const)(
    "of a %s mm bar on %s d, class %s, is %s: %s",
    (diameter, times, ductility, index, judgement) => {
      const found = outerFibre({ diameter, former: times * diameter, ductility });
      expect(found.index).toBeCloseTo(index, 3);
      expect(found.judgement).toBe(judgement);
    },
  );

  it("is raised by cold and stopped by a former below the least", () => {
    const bar = { diameter: 32, former: 224, ductility: "B" } as const;
    expect(outerFibre({ ...bar, circumstances: ["cold"] }).judgement).toBe("watch");
    expect(outerFibre({ ...bar, belowLeastFormer: true }).judgement).toBe("do not bend");
  });
});
