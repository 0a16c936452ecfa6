import { defineRule } from "../rule";
import { fieldWords, isOneOf, sumLines } from "../sum-lines";

export default defineRule({
  code: "SUM104",
  name: "struck-bar-in-sum",
  severity: "off-standard",
  docs: {
    summary: "Bars that are struck through still count in a total line.",
    why: "A deleted bar stays in the tonnage, and is often cut with it. Strike-through is a format, so no small table can show it here.",
    failing: [],
    passing: [
      {
        rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 }],
        foot: [{ member: "TOTAL", mass: 3.16 }],
      },
    ],
  },
  messages: {
    struck:
      "the line gives {typed} for {what}, which counts bars that are struck through: {sum} without them",
  },
  checkSheet(sheet, _context, report) {
    for (const { line, column, field, typed, sums, sumsWithStruck } of sumLines(sheet)) {
      if (isOneOf(typed, sums) || !isOneOf(typed, sumsWithStruck)) continue;
      report({
        messageId: "struck",
        place: { row: line.row, column },
        values: { typed, what: fieldWords(field), sum: sums[0] ?? 0 },
      });
    }
  },
});
