import { describe, expect, it } from "vitest";
import { compiledShape } from "../../../core/shapes/compiled-shape";
import { pathTemplate } from "../../../core/shapes/path-template";
import { compileLimits } from "../../../core/shapes/shape-limit-text";
import { resolveStandard, STANDARD_IDS } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";

describe("the texts of shapes", () => {
  it("are understood for every shape of every standard, and speak of its own dims only", () => {
    for (const id of STANDARD_IDS) {
      const standard = resolveStandard(id);
      if (isRefusal(standard)) throw new Error(id);
      for (const definition of standard.shapes.values()) {
        const shape = compiledShape(definition);
        const own = new Set(shape.columns);
        const letters = (places: readonly number[]) => places.filter((place) => place < 10);
        const used = [
          shape.formula,
          shape.formulaWhen?.formula,
          ...shape.limits.flatMap((limit) => [limit.actual, limit.bound]),
        ];
        for (const formula of used) {
          for (const place of letters(formula?.places ?? []))
            expect(own.has(place), `${id} ${definition.code}`).toBe(true);
        }
        for (const angle of shape.angles) {
          for (const place of letters(angle.places))
            expect(own.has(place), `${id} ${definition.code}`).toBe(true);
        }
        if (definition.free !== null) expect(definition.dims).toContain(definition.free);
      }
    }
  });

  it("has the free dim of the printed formula in brackets in the path too", () => {
    const standard = resolveStandard("BS8666:2005");
    if (isRefusal(standard)) throw new Error("BS8666:2005");
    for (const definition of standard.shapes.values()) {
      const bracketed = compiledShape(definition).formula?.bracketed ?? [];
      if (definition.free !== null) expect(bracketed, definition.code).toContain(definition.free);
    }
  });

  it.each(["A +90", "A B", "A +x B", "(A +90 B", "A +90 1000", "+90 A"])(
    "throws for the slip %s in a path",
    (text) => {
      expect(() => pathTemplate(text, "planar")).toThrow(/path/);
    },
  );

  it("throws for a limit without a relation", () => {
    expect(() => compileLimits("A, B")).toThrow(/no limit/);
  });
});
