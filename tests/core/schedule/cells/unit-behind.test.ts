import { describe, expect, it } from "vitest";
import { cleanText } from "../../../../core/schedule/cells/clean-text";
import { readLengthText } from "../../../../core/schedule/cells/read-length-text";
import { latinUnit } from "../../../../core/schedule/cells/unit-behind";

const read = (typed: string) =>
  readLengthText(cleanText(typed), {
    factor: 1,
    comma: typed.includes(",") ? "decimal" : "thousands",
    feetInches: false,
  });

// common practice: the abbreviations of the metre, centimetre and millimetre by language
describe("a length with its unit behind it", () => {
  it.each([
    ["2.10 \u0e21.", 2100],
    ["210 \u0e0b\u0e21.", 2100],
    ["2100 \u0e21\u0e21.", 2100],
    ["2,10 \u043c.", 2100],
    ["210 \u0441\u043c", 2100],
    ["2100 \u043c\u043c.", 2100],
    ["2.10 \u7c73", 2100],
    ["210 \u5398\u7c73", 2100],
    ["210 \u05e1\u05f4\u05de", 2100],
    ["2.10 \u0645\u062a\u0631", 2100],
    ["210 \u0633\u0645", 2100],
    ["2100 \u03c7\u03bb\u03c3\u03c4.", 2100],
    ["2.10 \u09ae\u09bf", 2100],
    ["2.10 \u092e\u0940.", 2100],
    ["2.10 mts.", 2100],
    ["2.10 mt", 2100],
    ["210 cm.", 2100],
  ])("should read %s as %d mm", (typed, wanted) => {
    expect(read(typed)).toMatchObject({ is: "value", value: wanted });
  });

  it("should take no other word for a unit of length", () => {
    for (const typed of ["12 \u0448\u0442", "2.10 \u043a\u0433", "2.10 n"])
      expect(read(typed).is).toBe("unread");
    expect(latinUnit("H12")).toBe("H12");
  });
});
