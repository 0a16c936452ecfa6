import { defineRule } from "../rule";
import { fieldWords, isOneOf, sumLines } from "../sum-lines";

export default defineRule({
  code: "SUM103",
  name: "sum-line-differs",
  severity: "off-standard",
  docs: {
    summary: "A total line is not the sum of the bars above it.",
    why: "The tonnage ordered and invoiced is read from this line.",
    failing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
          { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
        ],
        foot: [{ member: "TOTAL", mass: 12.48 }],
      },
    ],
    passing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
          { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
        ],
        foot: [{ member: "TOTAL", mass: 9.48 }],
      },
    ],
  },
  messages: { differs: "the line gives {typed} for {what}, but the bars above add up to {sum}" },
  checkSheet(sheet, _context, report) {
    for (const { line, column, field, typed, sums, sumsWithStruck } of sumLines(sheet)) {
      if (isOneOf(typed, sums) || isOneOf(typed, sumsWithStruck)) continue;
      report({
        messageId: "differs",
        place: { row: line.row, column },
        values: { typed, what: fieldWords(field), sum: sums[0] ?? 0 },
      });
    }
  },
});
