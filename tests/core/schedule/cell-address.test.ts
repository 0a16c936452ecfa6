import { describe, expect, it } from "vitest";
import { cellAddress, columnLetters } from "../../../core/schedule/cell-address";

describe("cellAddress", () => {
  it("should count in the sheet's own coordinates", () => {
    expect(cellAddress({ top: 0, left: 0 }, 11, 5)).toBe("F12");
    expect(cellAddress({ top: 4, left: 2 }, 0, 0)).toBe("C5");
  });

  // ISO/IEC 29500 (Office Open XML) sheets end at column XFD, the 16,384th
  it("should name every column to XFD", () => {
    expect([0, 25, 26, 51, 701, 702, 16_383].map(columnLetters)).toEqual([
      "A",
      "Z",
      "AA",
      "AZ",
      "ZZ",
      "AAA",
      "XFD",
    ]);
  });
});
