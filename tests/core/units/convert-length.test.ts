import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromMillimetres, toMillimetres } from "../../../core/units/convert-length";
import { exactProduct } from "../../../core/units/exact-product";

describe("lengths between units", () => {
  it("takes inches in decimals, where floats leave dust", () => {
    expect(0.375 * 25.4).not.toBe(9.525);
    expect(toMillimetres(0.375, "in")).toBe(9.525);
    expect(fromMillimetres(57.15, "in")).toBe(2.25);
  });

  it("leaves millimetres alone", () => {
    expect(toMillimetres(12.3, "mm")).toBe(12.3);
    expect(fromMillimetres(12.3, "mm")).toBe(12.3);
  });

  it("keeps an unbounded limit unbounded", () => {
    expect(toMillimetres(Number.POSITIVE_INFINITY, "in")).toBe(Number.POSITIVE_INFINITY);
  });

  it("should come back from millimetres to the inches given", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (thousandths) => {
        const inches = thousandths / 1000;
        expect(fromMillimetres(toMillimetres(inches, "in"), "in")).toBe(inches);
      }),
    );
  });
});

describe("exactProduct", () => {
  it("multiplies printed numbers as printed", () => {
    expect(6 * 9.525).not.toBe(57.15);
    expect(exactProduct(6, 9.525)).toBe(57.15);
    expect(exactProduct(4, 16)).toBe(64);
  });
});
