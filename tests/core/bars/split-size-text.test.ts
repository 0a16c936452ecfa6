import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { splitSizeText } from "../../../core/bars/split-size-text";

describe("splitSizeText", () => {
  it.each<[string, string, number, string]>([
    ["16", "", 16, ""],
    ["H16", "H", 16, ""],
    ["h 16", "H", 16, ""],
    ["T-16", "T", 16, ""],
    ["Ø16", "", 16, ""],
    ["ø 16 mm", "", 16, "MM"],
    ["φ16", "", 16, ""],
    ["16ø", "", 16, ""],
    ["HØ16", "H", 16, ""],
    ["dia 16", "", 16, ""],
    ["dia. 16mm", "", 16, "MM"],
    ["16 dia", "", 16, ""],
    ["16mm", "", 16, "MM"],
    ["#5", "#", 5, ""],
    ["# 11", "#", 11, ""],
    ["No.5", "#", 5, ""],
    ["no 5", "#", 5, ""],
    ["15M", "", 15, "M"],
    ["M.S. 8", "MS", 8, ""],
    ["m. s. 8", "MS", 8, ""],
    ["HD16", "HD", 16, ""],
    ["D12.7", "D", 12.7, ""],
    ["TMT 12", "TMT", 12, ""],
    ["B500B 16", "B500B", 16, ""],
    ["HRB400E 16", "HRB400E", 16, ""],
    ["Fe500D 16", "FE500D", 16, ""],
    ["H125", "H", 125, ""],
  ])("splits %s", (typed, prefix, number, suffix) => {
    expect(splitSizeText(typed)).toEqual({ prefix, number, suffix });
  });

  it.each(["", "H", "abc", "-16", "0", "16x", "16 20", "1e3", "#", "2H16", "16M20"])(
    "finds no size in %s",
    (typed) => {
      expect(splitSizeText(typed)).toBeNull();
    },
  );

  it("should find a number above zero or nothing", () => {
    fc.assert(
      fc.property(fc.string(), (typed) => {
        const parts = splitSizeText(typed);
        expect(parts === null || parts.number > 0).toBe(true);
      }),
    );
  });
});
