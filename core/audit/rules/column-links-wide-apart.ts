import { membersWithLinks } from "../member-bars";
import { isColumn } from "../member-size";
import { defineRule } from "../rule";

export default defineRule({
  code: "MEMBER107",
  name: "column-links-wide-apart",
  severity: "off-standard",
  docs: {
    summary: "The links of a column are further apart than its thinnest main bar allows.",
    why: "Between two links a bar in compression stands free: too far apart, and it buckles out of the concrete. Ask the designer.",
    failing: [
      {
        rows: [
          { member: "column C1", size: "H16", shape: "00", A: 3000, length: 3000 },
          {
            member: "column C1",
            size: "H8",
            shape: "51",
            A: 340,
            B: 340,
            C: 115,
            length: 1525,
            spacing: 350,
          },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { member: "column C1", size: "H16", shape: "00", A: 3000, length: 3000 },
          {
            member: "column C1",
            size: "H8",
            shape: "51",
            A: 340,
            B: 340,
            C: 115,
            length: 1525,
            spacing: 200,
          },
        ],
      },
    ],
  },
  messages: {
    wide: "links at {spacing} about bars of {bar}: {most} at most are asked for in a column; ask the designer",
  },
  checkSheet(sheet, { standard }, report) {
    for (const { links, thinnest } of membersWithLinks(sheet)) {
      const rule = thinnest === null ? null : standard.detailing("spacing of column links", thinnest);
      if (rule === null || thinnest === null) continue;
      const { perDiameter = Infinity, perLink = Infinity, atMost = Infinity } = rule.value;
      for (const facts of links) {
        const { spacing } = facts.row;
        if (!spacing || facts.diameter === null || !facts.inWords(isColumn)) continue;
        const most = Math.min(perDiameter * thinnest, perLink * facts.diameter, atMost);
        if (spacing <= most + 1) continue;
        report({
          messageId: "wide",
          row: facts,
          at: facts.has("spacing") ? "spacing" : "size",
          values: { spacing: { mm: spacing }, bar: { mm: thinnest }, most: { mm: most } },
          cite: rule.cite,
        });
      }
    }
  },
});
