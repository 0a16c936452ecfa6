import { describe, expect, it } from "vitest";
import { printLength } from "../../../core/units/print-length";

describe("printLength", () => {
  it.each<[number, string]>([
    [1250, "1250 mm"],
    [0, "0 mm"],
    [1234.5678, "1234.57 mm"],
    [-12.5, "-12.5 mm"],
  ])("prints %s mm", (mm, text) => {
    expect(printLength(mm, "mm")).toBe(text);
  });

  it.each<[number, string]>([
    [1028.7, "3'-4 1/2\""],
    [304.8, "1'-0\""],
    // 72 7/8 in: written without the nought it is misread
    [1851.025, "6'-0 7/8\""],
    [19.05, '3/4"'],
    [95.25, '3 3/4"'],
    [0, '0"'],
    [304.7999, "1'-0\""],
    [-50.8, '-2"'],
    // 1000 mm is 39.370 in: no sixteenth, so decimals say it
    [1000, "3'-3.37\""],
  ])("prints %s mm in feet and inches", (mm, text) => {
    expect(printLength(mm, "in")).toBe(text);
  });

  it("shows what is no number as it is", () => {
    expect(printLength(Number.NaN, "mm")).toBe("NaN");
  });
});
