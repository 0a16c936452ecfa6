import type { BarFacts } from "../../bar/bar-facts";
import { barsAbout, isLink, type MembersWithLinks, membersWithLinks } from "../member-bars";
import { isColumn } from "../member-size";
import { defineRule } from "../rule";

export default defineRule({
  code: "MEMBER108",
  name: "column-link-thin",
  severity: "off-standard",
  docs: {
    summary: "A link of a column is thinner than its thickest main bar allows.",
    why: "A thin link does not hold a thick bar in its place. The size is the designer's: ask the designer.",
    failing: [
      {
        rows: [
          { member: "column C1", size: "H40", shape: "00", A: 3000, length: 3000 },
          { member: "column C1", size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { member: "column C1", size: "H32", shape: "00", A: 3000, length: 3000 },
          { member: "column C1", size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525 },
        ],
      },
    ],
  },
  messages: {
    thin: "links of {size} about bars of {bar}: {least} at least is asked for in a column; ask the designer",
  },
  checkSheet({ answers }, _context, report) {
    for (const { facts, answer } of answers.those(thinLink, membersWithLinks(answers))) {
      const { thickest, least, cite } = answer;
      report({
        messageId: "thin",
        row: facts,
        at: "size",
        values: { size: facts.sizeName, bar: { mm: thickest }, least: { mm: least } },
        cite,
      });
    }
  },
});

function thinLink(facts: BarFacts, members: MembersWithLinks) {
  const about = barsAbout(facts, members);
  if (about === null || facts.diameter === null || !facts.inWords(isColumn)) return null;
  const { thickest } = about;
  const rule = facts.standard.detailing("size of column links", thickest);
  if (rule === null) return null;
  const least = Math.max((rule.value.perDiameter ?? 0) * thickest, rule.value.atLeast ?? 0);
  // a spiral has rules of its own
  if (facts.diameter >= least - 0.05 || facts.pathKind === "helix" || !isLink(facts)) return null;
  return { thickest, least, cite: rule.cite };
}
