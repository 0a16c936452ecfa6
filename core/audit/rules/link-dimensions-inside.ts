import { linkSides } from "../../bar/link-sides";
import { memberSize } from "../member-size";
import { COVER_GEOMETRY } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MEMBER103",
  name: "link-dimensions-inside",
  severity: "unsafe",
  needs: "closed link",
  docs: {
    summary:
      "The link's dimensions are two bar diameters short of the section less cover: inside instead of outside.",
    why: "Bent to the outside as the standard reads them, the link is too small for its bars.",
    failing: [
      {
        rows: [
          { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 500, B: 200, C: 130, length: 1575 },
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
    inside:
      "{a} x {b} is the section less cover, measured inside the link: dimensions are to the outside of the bar, ask the designer",
  },
  ofWords: memberSize,
  checkRow(facts, _context, report) {
    const sides = linkSides(facts);
    const member = sides === null ? null : facts.inWords(memberSize);
    const { diameter } = facts;
    if (sides === null || member === null || member.cover === null || diameter === null) return;
    const lost = 2 * member.cover + 2 * diameter;
    if (sides.long !== member.wide - lost || sides.short !== member.narrow - lost) return;
    report({
      messageId: "inside",
      outcome: "unsure",
      at: "A",
      values: { a: { mm: sides.long }, b: { mm: sides.short } },
      cite: COVER_GEOMETRY,
    });
  },
});
