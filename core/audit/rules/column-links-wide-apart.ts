import type { BarFacts } from "../../bar/bar-facts";
import { barsAbout, isLink, type MembersWithLinks, membersWithLinks } from "../member-bars";
import { isColumn } from "../member-size";
import { defineRule, type ExampleRow } from "../rule";

export default defineRule({
  code: "MEMBER107",
  name: "column-links-wide-apart",
  severity: "off-standard",
  docs: {
    summary: "The links of a column are further apart than its thinnest main bar allows.",
    why: "Between two links a bar in compression stands free: too far apart, and it buckles out of the concrete. Ask the designer.",
    failing: [{ rows: columnWithLinksAt(350) }],
    passing: [{ rows: columnWithLinksAt(200) }],
  },
  messages: {
    wide: "links at {spacing} about bars of {bar}: {most} at most are asked for in a column; ask the designer",
  },
  checkSheet({ answers }, _context, report) {
    for (const { facts, answer } of answers.those(wideApart, membersWithLinks(answers))) {
      const { spacing, thinnest, most, cite } = answer;
      report({
        messageId: "wide",
        row: facts,
        at: facts.has("spacing") ? "spacing" : "size",
        values: { spacing: { mm: spacing }, bar: { mm: thinnest }, most: { mm: most } },
        cite,
      });
    }
  },
});

function wideApart(facts: BarFacts, members: MembersWithLinks) {
  const { spacing } = facts.row;
  const thinnest = barsAbout(facts, members)?.thinnest ?? null;
  if (!spacing || thinnest === null || facts.diameter === null || !facts.inWords(isColumn)) return null;
  const rule = facts.standard.detailing("spacing of column links", thinnest);
  if (rule === null) return null;
  const { perDiameter = Infinity, perLink = Infinity, atMost = Infinity } = rule.value;
  const most = Math.min(perDiameter * thinnest, perLink * facts.diameter, atMost);
  if (spacing <= most + 1 || !isLink(facts)) return null;
  return { spacing, thinnest, most, cite: rule.cite };
}

function columnWithLinksAt(spacing: number): readonly ExampleRow[] {
  const link = { size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525 };
  return [
    { member: "column C1", size: "H16", shape: "00", A: 3000, length: 3000 },
    { member: "column C1", ...link, spacing },
  ];
}
