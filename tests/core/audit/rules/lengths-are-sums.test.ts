import { describe, expect, it } from "vitest";
import type { ExampleRow } from "../../../../core/audit/rule";
import lengthDiffers from "../../../../core/audit/rules/length-differs";
import rule from "../../../../core/audit/rules/lengths-are-sums";
import { findingsOf, ruleCases } from "../rule-cases";

// lengths as lists of the United States give them, legs out to out; a published magazine article on detailing
// names both lengths of one bar, 64 in detailed and 61.5 in cut
const SUMS: readonly ExampleRow[] = [
  { size: "#5", shape: "12in +90 40in", length: "52in" },
  { size: "#6", shape: "16in +90 60in", length: "76in" },
  { size: "#8", shape: "20in +90 80in +90 20in", length: "120in" },
];
const standard = "ACI318:2019";

ruleCases(rule, {
  silent: [
    { standard, rows: SUMS.slice(0, 2) },
    { standard, rows: SUMS.map((row) => ({ ...row, length: null })) },
  ],
  speaks: [
    {
      standard,
      rows: SUMS,
      says: [
        {
          cell: null,
          // by hand, #8 on 6d: a right angle takes 2 (3 + 1) - (pi/2) 3.5 = 2.50 in, two 5.0 off 120
          message:
            '3 of 3 lengths of bent bars are the sums of their legs; the lengths to cut are shorter, by 5" at the most: 10\'-0" is 9\'-7" to cut',
        },
      ],
    },
  ],
});

describe("length-differs", () => {
  it("should be silent on sums of legs where they are the sheet's habit, and tell a bar that is not one", () => {
    const odd = { size: "#5", shape: "12in +90 40in", length: "70in" };
    expect(findingsOf(lengthDiffers, { standard, rows: [...SUMS, odd] }).map(({ row }) => row)).toEqual([5]);
    expect(findingsOf(lengthDiffers, { standard, rows: SUMS.slice(0, 1) })).toHaveLength(1);
  });
});
