import Decimal from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formula } from "../../../core/shapes/formula";
import { noValues, placeOf } from "../../../core/shapes/shape-values";
import { substitutedFormula } from "../../../core/shapes/substituted-formula";
import { standardNamed } from "./resolved";

function values(given: Record<string, number>): number[] {
  const list = noValues();
  for (const [symbol, value] of Object.entries(given)) list[placeOf(symbol)!] = value;
  return list;
}

describe("formula", () => {
  it.each([
    ["A + (B) - 0.5r - d", { A: 1000, B: 400, r: 24, d: 12 }, 1376],
    ["2(A + B + (C)) - 2.5r - 5d", { A: 1000, B: 400, C: 500, r: 24, d: 12 }, 3680],
    ["A + 0.57B + (C) - 1.6d", { A: 100, B: 200, C: 300, d: 10 }, 498],
    ["C pi (A - d)", { A: 500, C: 20, d: 10 }, 20 * Math.PI * 490],
    ["C sqrt((pi(A - d))^2 + B^2)", { A: 3 / Math.PI + 1, B: 4, C: 2, d: 1 }, 10],
    ["2A + B + max(21d, 240)", { A: 10, B: 1, d: 10 }, 261],
    ["2A + B + max(21d, 240)", { A: 10, B: 1, d: 20 }, 441],
    ["B/2 + 5d", { B: 90, d: 10 }, 95],
    ["D sin t + d cos t", { D: 2, d: 3, t: 30 }, 1 + 1.5 * Math.sqrt(3)],
    ["P(links) + 2P", { P: 1, "P(links)": 10 }, 12],
    ["-A + B", { A: 1, B: 3 }, 2],
  ])("evaluates %s", (text, given, expected) => {
    expect(formula(text).evaluate(values(given))).toBeCloseTo(expected, 9);
  });

  it("says which dims stand in brackets", () => {
    expect(formula("A + B + C + (D) + 2(E) - 2.5r - 5d").bracketed).toEqual(["D", "E"]);
    expect(formula("pi(A - d) + (B)").bracketed).toEqual(["B"]);
  });

  it("gives NaN where a symbol has no value", () => {
    expect(formula("A + B").evaluate(values({ A: 1 }))).toBeNaN();
  });

  it.each(["A +", "A + Z", "(A + B", "A ^ 3", "A B )"])("throws for the slip %s in data", (text) => {
    expect(() => formula(text)).toThrow(/formula/);
  });

  it("should be within its error bound of the exact value, for every printed formula", () => {
    const shapes = [...standardNamed("BS8666:2020").shapes.values()];
    const texts = shapes.flatMap(({ formula: text, formulaWhen }) =>
      [text, formulaWhen?.formula].filter((one) => one != null),
    );
    const length = fc.integer({ min: 1, max: 1_200_000 }).map((n) => n / 100);
    fc.assert(
      fc.property(
        fc.constantFrom(...texts),
        fc.array(length, { minLength: 13, maxLength: 13 }),
        (text, lengths) => {
          const list = noValues();
          for (const [place, value] of lengths.entries()) list[place] = value;
          // a ring is thicker than its bar
          list[placeOf("A")!]! += 13_000;
          const compiled = formula(text);
          const exact = compiled.exact(list);
          const off = new Decimal(compiled.evaluate(list)).minus(exact).abs();
          expect(off.lte(compiled.errorBound(list))).toBe(true);
        },
      ),
      { numRuns: 5000 },
    );
  });
});

describe("substitutedFormula", () => {
  const write = (value: number) => String(value);

  it.each([
    ["A + B + (C) - r - 2d", "1000 + 400 + (500) - 32 - 2 x 16"],
    ["2(A + B + (C)) - 2.5r", "2 x (1000 + 400 + (500)) - 2.5 x 32"],
    ["C pi (A - d)", "500 x pi x (1000 - 16)"],
    ["2A + B + max(21d, 240)", "2 x 1000 + 400 + max(21 x 16, 240)"],
    ["B/2 + 5d", "400/2 + 5 x 16"],
  ])("writes numbers into %s", (text, expected) => {
    const list = values({ A: 1000, B: 400, C: 500, r: 32, d: 16 });
    expect(substitutedFormula(text, list, write)).toBe(expected);
  });
});
