import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseLength } from "../../../core/units/parse-length";
import { printLength } from "../../../core/units/print-length";
import { isRefusal, refusalText } from "../../../core/units/refusal";

// 1 in = 25.4 mm and 1 ft = 304.8 mm exactly (international yard and pound agreement of 1959)
const IN = 25.4;

describe("parseLength", () => {
  it.each<[string | number, "mm" | "in", number]>([
    [1250, "mm", 1250],
    [0, "mm", 0],
    [3.75, "in", 95.25],
    ["1250", "mm", 1250],
    ["1250", "in", 1250 * IN],
    ["1250 mm", "mm", 1250],
    ["1250mm", "in", 1250],
    ["1250 mm.", "mm", 1250],
    ["1.25 m", "mm", 1250],
    ["1.005 m", "mm", 1005],
    ["45 cm", "mm", 450],
    ["12 metres", "mm", 12000],
    ["16in", "mm", 16 * IN],
    ["40 1/2 in", "mm", 1028.7],
    ["40 1/2", "in", 1028.7],
    ["40-1/2 in", "in", 1028.7],
    ["3'-4 1/2\"", "in", 1028.7],
    ["3'-4.5\"", "mm", 1028.7],
    ["3'4\"", "mm", 1016],
    ["3' 4", "in", 1016],
    ["3 ft 4 in", "mm", 1016],
    ["3'", "in", 914.4],
    ["3'-0\"", "in", 914.4],
    ['3/4"', "mm", 19.05],
    // primes and vulgar fractions as Unicode prints them
    ["3\u2032-4\u00BD\u2033", "in", 1028.7],
    ["\u00BC in", "mm", 6.35],
    ["2\u215E\u201D", "in", 73.025],
    // thousands, where only one reading makes sense
    ["1,250", "mm", 1250],
    ["1 250", "mm", 1250],
    ["1\u00A0250 mm", "mm", 1250],
    ["12,000,000", "mm", 12_000_000],
    ["1,250.5", "mm", 1250.5],
    ["1.250,5", "mm", 1250.5],
    ["1,25 m", "mm", 1250],
    ["  900 ", "mm", 900],
  ])("reads %s with unit %s", (typed, unit, mm) => {
    expect(parseLength(typed, unit)).toBe(mm);
  });

  it.each<[string | number, "mm" | "in", string]>([
    ["abc", "mm", `length "abc" could not be read: give a number of mm`],
    ["", "mm", "could not be read"],
    ["12 furlongs", "mm", "could not be read"],
    ["1/0", "in", "could not be read"],
    ["5 m 20", "mm", "could not be read"],
    [Number.NaN, "mm", "could not be read"],
    [Number.POSITIVE_INFINITY, "mm", "could not be read"],
    [-5, "mm", "below zero"],
    ["-5 mm", "mm", "below zero"],
    ["\u22125 mm", "mm", "below zero"],
    ["12,000 m", "mm", "can be read as 12000 or as 12.000 m"],
    ["3'-14\"", "in", "inches stay below 12"],
    // more digits than a number holds
    ["1".repeat(309), "mm", "could not be read"],
    [`${"1".repeat(309)} m`, "mm", "could not be read"],
    [`${"9".repeat(308)} ft`, "in", "could not be read"],
    [1e308, "in", "could not be read"],
    [`600${" ".repeat(32_000)}x`, "mm", "could not be read"],
  ])("refuses %s as a bad value", (typed, unit, words) => {
    const answer = parseLength(typed, unit);
    if (!isRefusal(answer)) throw new Error(`read as ${answer}`);
    expect(answer.kind).toBe("value");
    expect(refusalText(answer)).toContain(words);
  });

  it("should read back what printLength prints, to the sixteenth", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 16 * 12 * 100 }), (sixteenths) => {
        const mm = (sixteenths * IN) / 16;
        expect(parseLength(printLength(mm, "in"), "in")).toBeCloseTo(mm, 9);
      }),
    );
  });

  it("should answer every text with a length of zero or more, or a refusal", () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom("mm" as const, "in" as const), (text, unit) => {
        const answer = parseLength(text, unit);
        expect(isRefusal(answer) || answer >= 0).toBe(true);
      }),
    );
  });
});
