import { describe, expect, it } from "vitest";
import { shapeLimits } from "../../../core/shapes/shape-limits";
import { resolved } from "./resolved";

function judged(shape: string, diameter: number, dims: (number | null)[]) {
  return shapeLimits(resolved({ shape, diameter, dims })).map(
    ({ text, letter, least, most, met }) => `${text} | ${letter} ${least ?? ""}..${most ?? ""} ${met}`,
  );
}

describe("shapeLimits", () => {
  it("judges each dim against P of Table 2", () => {
    // BS 8666:2005 Table 2, 16 mm: P 130
    expect(judged("21", 16, [130, 400, 129])).toEqual([
      "A, (C) >= P | A 130.. true",
      "A, (C) >= P | C 130.. false",
    ]);
  });

  it("takes P for links where the text says so, and both sides of an or", () => {
    // BS 8666:2005 Table 2, 10 mm links with a bend below 150: P 130
    expect(judged("51", 10, [300, 125, 130])).toEqual([
      "(C) <= A or B | C ..300 true",
      "(C) <= A or B | C ..125 false",
      "(C) >= P(links) | C 130.. true",
    ]);
  });

  it("takes P in general for the 180 hooks of code 47", () => {
    // BS 8666:2005 Table 2, 10 mm: P 120, also of links with a bend of 150 or more
    expect(judged("47", 10, [300, 200, 120, 125])).toEqual([
      "(C) = (D) | C 125..125 false",
      "(C) <= A | C ..300 true",
      "(C) >= P | C 120.. true",
    ]);
  });

  it("takes the printed r 87 of a 25 mm bar", () => {
    // 2(r + d) = 2(87 + 25) = 224; C/2 + 5d = 237
    expect(judged("22", 25, [300, 300, 224, 237])).toEqual([
      "C >= 2(r + d) | C 224.. true",
      "A, (D) >= P | A 240.. true",
      "A, (D) >= P | D 240.. false",
      "(D) >= C/2 + 5d | D 237.. true",
    ]);
  });

  it("judges R of code 12 against 6d of leg and the least radius", () => {
    expect(judged("12", 16, [396, 395, 300])).toEqual([
      "A, (B) >= P | A 130.. true",
      "A, (B) >= P | B 130.. true",
      "A, (B) >= R + 6d | A 396.. true",
      "A, (B) >= R + 6d | B 396.. false",
      "R >= r | R 32.. true",
    ]);
  });

  it("is not judged where the standard holds no bound", () => {
    const limits = shapeLimits(
      resolved({ standard: "BS8666:2005+GB50204:2015", shape: "21", diameter: 16, dims: [500, 400, 500] }),
    );
    for (const limit of limits) expect([true, null]).toContain(limit.met);
  });

  it("is empty for a path", () => {
    expect(shapeLimits(resolved({ shape: "500 +90 300", diameter: 16, dims: [] }))).toEqual([]);
  });
});
