import { describe, expect, it } from "vitest";
import { findingText } from "../../../core/audit/finding-text";

describe("findingText", () => {
  it.each([
    ["{x} bars", { x: 12.3456 }, "12.346 bars"],
    ["{x}", { x: { kg: 31.5849 } }, "31.58 kg"],
    ["{x}", { x: { mm: 875.04 } }, "875 mm"],
    // as it stands in the cell
    ["{x}", { x: { mm: 1.25, typed: true } }, "1.25 mm"],
    ["{x}", { x: { mm: 0.1 + 0.2, typed: true } }, "0.3 mm"],
    // too large to be multiplied: it stands as it is
    ["{x}", { x: 1e308 }, "1e+308"],
    ["{x}", { x: { kg: 1e308 } }, "1e+308 kg"],
    ["{x} and {y}", { x: "a" }, "a and {y}"],
  ] as const)("fills %s", (template, values, text) => {
    expect(findingText(template, values, "mm")).toBe(text);
  });

  it("says lengths in feet and inches where the standard does", () => {
    expect(findingText("{x}", { x: { mm: 1028.7 } }, "in")).toBe("3'-4 1/2\"");
  });
});
