import { grandTotals } from "../grand-totals";
import { defineRule } from "../rule";
import { fieldWords, isOneOf, type SumLine, sumLines } from "../sum-lines";

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
  messages: {
    differs: "the line gives {typed} for {what}, but the bars above add up to {sum}",
    ofSizes: "the line gives {typed}, but the sums by size above it add up to {sum}",
  },
  checkSheet(sheet, _context, report) {
    const lines = sumLines(sheet);
    const ofParts = linesOfParts(lines);
    for (const one of lines) {
      const { line, column, field, typed, sums, sumsWithStruck } = one;
      if (isOneOf(typed, sums) || isOneOf(typed, sumsWithStruck) || ofParts.has(one)) continue;
      report({
        messageId: "differs",
        place: { row: line.row, column },
        values: { typed, what: fieldWords(field), sum: sums[0] ?? 0 },
      });
    }
    for (const { line, column, typed, sums } of grandTotals(sheet)) {
      if (isOneOf(typed, sums)) continue;
      const sum = Math.round((sums[0] ?? 0) * 1000) / 1000;
      report({ messageId: "ofSizes", place: { row: line.row, column }, values: { typed, sum } });
    }
  },
});

/** Lines one below another, such as "coated" and "plain", that share out the sum of the bars between them. */
function linesOfParts(lines: readonly SumLine[]): ReadonlySet<SumLine> {
  const parts = new Set<SumLine>();
  lines.forEach((first, at) => {
    const run = [first];
    let sum = first.typed;
    for (const next of lines.slice(at + 1)) {
      if (next.column !== first.column) continue;
      if (next.line.row !== (run.at(-1)?.line.row ?? 0) + 1) break;
      run.push(next);
      sum = Math.round((sum + next.typed) * 1e6) / 1e6;
      if (!isOneOf(sum, first.sums)) continue;
      for (const one of run) parts.add(one);
      break;
    }
  });
  return parts;
}
