import { counted } from "../../units/counted";
import { looseSums } from "../loose-sums";
import { defineRule } from "../rule";
import { fieldWords } from "../sum-lines";
import { wrongGrandTotals, wrongLines } from "../wrong-lines";

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
    inSight: "the line gives {typed} for {what}, which leaves out {hidden}: {sum} with what is hidden",
    ofGroup:
      "{typed} is given for {what} of a group, but its bars add up to {sum}, as those of {right} of {of} groups do to theirs",
    ofSizes: "the line gives {typed}, but the sums by size above it add up to {sum}",
  },
  checkSheet(sheet, _context, report) {
    for (const { row, column, field, typed, sums, inSight } of wrongLines(sheet)) {
      if (inSight !== undefined) {
        report({
          messageId: "inSight",
          place: { row, column },
          values: {
            ...{ typed, what: fieldWords(field), sum: inSight.whole },
            hidden: counted(inSight.hidden, "hidden row"),
          },
        });
        continue;
      }
      report({
        messageId: "differs",
        place: { row, column },
        values: { typed, what: fieldWords(field), sum: sums[0] ?? 0 },
      });
    }
    for (const { row, column, field, typed, sums, right, of } of looseSums(sheet)) {
      report({
        messageId: "ofGroup",
        outcome: right < SURELY ? "unsure" : "broken",
        place: { row, column },
        values: { typed, what: fieldWords(field), sum: sums[0] ?? 0, right, of },
      });
    }
    for (const { row, column, typed, sums } of wrongGrandTotals(sheet)) {
      const sum = sums[0] ?? 0;
      report({ messageId: "ofSizes", place: { row, column }, values: { typed, sum } });
    }
  },
});

/** sums of groups that come out before another one is surely wrong */
const SURELY = 3;
