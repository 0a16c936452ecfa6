import { describe, expect, it } from "vitest";
import { printMass } from "../../../core/units/print-mass";
import { defineRefusal, refusalText } from "../../../core/units/refusal";

describe("refusalText", () => {
  const tooLong = defineRefusal(
    "t",
    "value",
    "{count} bars of {length} mm, the rack holds {held} mm: {text} mm",
  );

  it("should tell lengths in the reader's unit, and nothing else", () => {
    const refusal = tooLong({ count: 3, length: 95.25, held: "50.8, 76.2", text: "as wide" });
    expect(refusalText(refusal)).toBe("3 bars of 95.25 mm, the rack holds 50.8, 76.2 mm: as wide mm");
    // 1 in is 25.4 mm
    expect(refusalText(refusal, "in")).toBe('3 bars of 3 3/4", the rack holds 2", 3": as wide mm');
  });

  it("should cut a value of very many characters short", () => {
    const refusal = tooLong({ count: 1, length: 1, held: "", text: "a".repeat(1000) });
    expect(refusalText(refusal)).toMatch(/: a{399}… mm$/);
  });
});

describe("printMass", () => {
  it("should give pounds where lengths are in inches", () => {
    // 1 lb is 0.45359237 kg exactly
    expect([printMass(45.359237, "in"), printMass(45.359237, "mm"), printMass(84.77, "in", 1)]).toEqual([
      "100 lb",
      "45.36 kg",
      "186.9 lb",
    ]);
  });
});
