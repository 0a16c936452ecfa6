import { describe, expect, it } from "vitest";
import type { PlanarPath } from "../../../core/shapes/path";
import { dimOf } from "../../../core/shapes/shape-values";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { asked, resolved } from "./resolved";

function refusalOf(shape: string | number, dims: (number | null)[], more: object = {}): string {
  const answer = asked({ shape, diameter: 16, dims, ...more });
  return isRefusal(answer) ? `${answer.kind}: ${refusalText(answer)}` : "no refusal";
}

describe("resolveShape", () => {
  it("reads a number as a code", () => {
    expect(resolved({ shape: 0, diameter: 16, dims: [1000] }).code).toBe("00");
    expect(resolved({ shape: 1, diameter: 16, dims: [1000] }).code).toBe("01");
    expect(resolved({ shape: " 21 ", diameter: 16, dims: [1, 2, 3] }).code).toBe("21");
    expect(resolved({ shape: "0", diameter: 16, dims: [1000] }).code).toBe("00");
  });

  it("holds 00 as a straight bar in a standard without codes", () => {
    expect(resolved({ standard: "EC2:2004", shape: "00", diameter: 16, dims: [1000] }).code).toBe("00");
    expect(refusalOf("21", [1, 2, 3], { standard: "EC2:2004" })).toBe(
      `not-held: shape "21" is no code of EC2:2004, which holds straight bars (00) and paths only, though BS8666:2005, BS8666:2020 and ISO3766:2003 have it; nor is it a path, which has a turn such as +90: write the bar as a path`,
    );
  });

  it("needs no former for a straight bar in a document that prints none", () => {
    // ISO 3766 prints no bend diameters
    expect(resolved({ standard: "ISO3766:2003", shape: "00", diameter: 16, dims: [1000] }).code).toBe("00");
    expect(refusalOf("500 +90 300", [], { standard: "ISO3766:2003" })).toContain("prints no formers");
    expect(refusalOf("500 +90 300", [], { standard: "ISO3766:2003", former: 64 })).toBe("no refusal");
  });

  it("takes a radius right after the last letter or in column 5, blanks between", () => {
    for (const dims of [
      [1000, 400, 300],
      [1000, 400, null, null, 300],
      [1000, 400, 0, 0, 300],
      [1000, 400, 300, null, null],
    ]) {
      expect(dimOf(resolved({ shape: "12", diameter: 16, dims }).values, "R")).toBe(300);
    }
    expect(refusalOf("12", [1000, 400])).toContain("R is blank, and code 12 needs A, B, R");
    expect(refusalOf("12", [1000, 400, null, 300])).toContain("R is blank");
    expect(refusalOf("12", [1000, 400, 300, null, 300])).toContain("column 5 of the dims holds 300 mm");
    expect(dimOf(resolved({ shape: "67", diameter: 16, dims: [3000, null, null, 2000] }).values, "R")).toBe(
      2000,
    );
    expect(refusalOf("67", [3000, 2000])).toContain("R is blank");
  });

  it("refuses a blank that the code needs and ignores trailing blanks", () => {
    expect(refusalOf("21", [1000, null, 500])).toBe("value: B is blank, and code 21 needs A, B, C: give B");
    expect(refusalOf("21", [1000, 400])).toContain("C is blank");
    expect(resolved({ shape: "21", diameter: 16, dims: [1000, 400, 500, null, null] }).code).toBe("21");
  });

  it("refuses a dim that the code does not take, and one that is not over 0", () => {
    expect(refusalOf("21", [1000, 400, 500, 350])).toContain(
      "column 4 of the dims holds 350 mm, but code 21 takes A, B, C",
    );
    expect(refusalOf("21", [1000, 0, 500])).toContain("B of code 21 is 0 mm: it must be over 0");
    expect(refusalOf("21", [1000, -5, 500])).toContain("B of code 21 is -5 mm");
    expect(refusalOf("21", [1000, 400, 500, 0])).toBe("no refusal");
  });

  it("repeats C as D where a link's second end is left out", () => {
    const legs = (dims: number[]) =>
      (resolved({ shape: "51", diameter: 10, dims }).path as PlanarPath).legs.map((leg) => leg.length);
    expect(legs([500, 300, 120])).toEqual([120, 500, 300, 500, 300, 120]);
    expect(legs([500, 300, 120, 130])).toEqual([120, 500, 300, 500, 300, 130]);
  });

  it("solves a crank by D = B sin t + d cos t, not D/B", () => {
    // B 400, d 16, t 30: D = 200 + 16 cos 30 = 213.856
    const D = 200 + 16 * Math.cos(Math.PI / 6);
    const { turns } = resolved({ shape: "26", diameter: 16, dims: [1000, 400, 500, D] }).path as PlanarPath;
    expect(turns[0]?.angle).toBeCloseTo(30, 9);
    expect(turns[1]?.angle).toBeCloseTo(-30, 9);
  });

  it("names the dims that admit no angle", () => {
    expect(refusalOf("26", [1000, 400, 500, 600])).toBe(
      "value: code 26 has no bend angle from 0 to 90 degrees with B 400 mm, D 600 mm: D = B sin t + d cos t cannot be met, correct these dims",
    );
    expect(refusalOf("26", [1000, 400, 500, 10])).toContain("no bend angle");
    expect(refusalOf("24", [1000, 400, 500, 500])).toContain("D = B sin t");
  });

  it("takes link for a link code and main otherwise, unless given", () => {
    expect(resolved({ shape: "51", diameter: 10, dims: [500, 300, 120] }).use).toBe("link");
    expect(resolved({ shape: "21", diameter: 10, dims: [500, 300, 120] }).use).toBe("main");
    expect(resolved({ shape: "21", diameter: 10, dims: [500, 300, 120], use: "link" }).use).toBe("link");
    expect(resolved({ shape: "500 +90 300", diameter: 10, dims: [] }).use).toBe("main");
  });

  it("takes half the former as radius: the standard's least unless given", () => {
    expect(resolved({ shape: "11", diameter: 25, dims: [500, 300] })).toMatchObject({
      radius: 87.5,
      former: { value: 175 },
      formerGiven: false,
    });
    expect(resolved({ shape: "11", diameter: 25, dims: [500, 300], former: 100 })).toMatchObject({
      radius: 50,
      formerGiven: true,
    });
    expect(refusalOf("11", [500, 300], { former: 0 })).toContain("former 0 mm is no diameter");
  });

  it("names what the standard holds where a code is not its own", () => {
    expect(refusalOf("48", [500, 300, 120])).toMatch(
      /^not-held: shape "48" is no code of BS8666:2005, which holds 41.* though BS8666:2020, SANS282:2011 and BS4466:1989 have it/,
    );
    expect(refusalOf("T1", [500])).toContain("which holds 00, 01, 11");
    expect(refusalOf("", [500])).toContain("the shape is blank");
  });
});
