import { COUNT_FROM_SPACING } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "SUM106",
  name: "count-from-spacing",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "The number of bars is not floor(width / spacing) + 1 for the spacing and width given.",
    why: "There is one bar more than there are gaps: the last bar is the one that is forgotten.",
    failing: [
      {
        rows: [
          {
            size: "H10",
            shape: "00",
            A: 2000,
            length: 2000,
            members: 1,
            each: 20,
            total: 20,
            spacing: 150,
            remark: "over 3000",
          },
        ],
      },
    ],
    passing: [
      {
        rows: [
          {
            size: "H10",
            shape: "00",
            A: 2000,
            length: 2000,
            members: 1,
            each: 21,
            total: 21,
            spacing: 150,
            remark: "over 3000",
          },
        ],
      },
    ],
  },
  messages: { differs: "{each} bars at {spacing} over {width} should be {expected}" },
  fixes: { expected: { label: "change the number to {expected}", safety: "needs-review" } },
  checkRow(facts, _context, report) {
    const { each, total, spacing } = facts.row;
    const count = each ?? total;
    if (count === null || !spacing || facts.row.remark === null) return;
    const width = facts.inWords(widthSaid);
    if (width === null) return;
    const expected = Math.floor(width / spacing + 1e-9) + 1;
    // one in each face doubles it
    if (count === expected || count === 2 * expected) return;
    const at = each === null ? "total" : "each";
    report({
      messageId: "differs",
      at,
      values: { each: count, spacing: { mm: spacing }, width: { mm: width }, expected },
      cite: COUNT_FROM_SPACING,
      fix: { id: "expected", edits: [{ at, to: expected }] },
    });
  },
});

/** mm */
function widthSaid(words: string): number | null {
  const said = /\b(?:over|across|in a width of|width)\s*=?\s*(\d{3,6})\b/.exec(words)?.[1];
  return said === undefined ? null : Number(said);
}
