import { COUNT_FROM_SPACING } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "SUM106",
  name: "count-from-spacing",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "The number of bars is not that of the spacing and width given, rounded down or up.",
    why: "There is one bar more than there are gaps: the last bar is the one that is forgotten. Spacings are mostly the widest that are allowed, so a gap that is left over takes a bar more. The number is the designer's: ask.",
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
  messages: {
    differs:
      "{each} bars at {spacing} over {width}: {expected} make gaps of {spacing} at most; ask the designer",
  },
  ofWords: widthSaid,
  checkRow(facts, _context, report) {
    const { each, total, spacing } = facts.row;
    const count = each ?? total;
    if (count === null || !spacing || facts.row.remark === null) return;
    const width = facts.inWords(widthSaid);
    if (width === null) return;
    const least = Math.floor(width / spacing + 1e-9) + 1;
    const expected = Math.ceil(width / spacing - 1e-9) + 1;
    // one in each face doubles it
    if ([1, 2].some((faces) => count >= faces * least && count <= faces * expected)) return;
    const at = each === null ? "total" : "each";
    report({
      messageId: "differs",
      at,
      values: { each: count, spacing: { mm: spacing }, width: { mm: width }, expected },
      cite: COUNT_FROM_SPACING,
    });
  },
});

/** mm */
function widthSaid(words: string): number | null {
  const said = /\b(?:over|across|in a width of|width)\s*=?\s*(\d{3,6})\b/.exec(words)?.[1];
  return said === undefined ? null : Number(said);
}
