import { linkSides } from "../../bar/link-sides";
import { memberSize } from "../member-size";
import { COVER_GEOMETRY } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MEMBER102",
  name: "link-over-cover",
  severity: "unsafe",
  needs: "closed link",
  docs: {
    summary: "The link is larger than the member's section less the cover.",
    why: "It stands in the cover or does not go into the formwork at all.",
    failing: [
      {
        rows: [
          { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 540, B: 220, C: 130, length: 1700 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 520, B: 220, C: 130, length: 1650 },
        ],
      },
    ],
  },
  messages: {
    over: "{letter} {side} is over the {limit} that the section leaves with {cover} cover: ask the designer",
  },
  ofWords: memberSize,
  checkRow(facts, _context, report) {
    const sides = linkSides(facts);
    const member = sides === null ? null : facts.inWords(memberSize);
    if (sides === null || member === null) return;
    const cover = member.cover ?? 0;
    for (const [side, size] of [
      [sides.long, member.wide],
      [sides.short, member.narrow],
    ] as const) {
      const limit = size - 2 * cover;
      // as large as the member itself is another rule's
      if (side <= limit || side === size) continue;
      const letter = facts.dim("A") === side ? "A" : "B";
      report({
        messageId: "over",
        at: letter,
        values: { letter, side: { mm: side }, limit: { mm: limit }, cover: { mm: cover } },
        cite: COVER_GEOMETRY,
      });
      return;
    }
  },
});
