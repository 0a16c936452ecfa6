import { coverIn, memberLength } from "../member-size";
import { COVER_GEOMETRY } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MEMBER104",
  name: "bar-longer-than-member",
  severity: "doubtful",
  docs: {
    summary: "A straight bar is longer than the member less its covers.",
    why: "It does not go into the formwork, or stands in the end cover, unless it runs on into the next member.",
    failing: [
      {
        rows: [
          { member: "B1", size: "H16", shape: "00", A: 6000, length: 6000, remark: "length 6000 cover 40" },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { member: "B1", size: "H16", shape: "00", A: 5900, length: 5900, remark: "length 6000 cover 40" },
        ],
      },
    ],
  },
  messages: {
    longer:
      "straight bar of {length} is over the {limit} that the member of {member} leaves, unless it runs on into the next",
  },
  ofWords: memberLength,
  checkRow(facts, _context, report) {
    if (!facts.isStraight) return;
    const length = facts.dim("A") ?? facts.row.length;
    const member = facts.inWords(memberLength);
    if (length === null || member === null) return;
    const limit = member - 2 * (facts.inWords(coverIn) ?? 0);
    if (length <= limit) return;
    report({
      messageId: "longer",
      outcome: "unsure",
      at: facts.dim("A") === null ? "length" : "A",
      values: { length: { mm: length }, limit: { mm: limit }, member: { mm: member } },
      cite: COVER_GEOMETRY,
    });
  },
});
