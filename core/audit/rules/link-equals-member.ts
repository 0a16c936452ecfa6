import { linkSides } from "../../bar/link-sides";
import { memberSize } from "../member-size";
import { COVER_GEOMETRY } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MEMBER101",
  name: "link-equals-member",
  severity: "unsafe",
  needs: "closed link",
  docs: {
    summary: "A side of the link is as long as the member is wide or deep: no cover is left.",
    why: "Without cover the steel rusts and the member loses its fire resistance.",
    failing: [
      { rows: [{ member: "B1 300x600", size: "H10", shape: "51", A: 600, B: 300, C: 130, length: 1975 }] },
    ],
    passing: [
      { rows: [{ member: "B1 300x600", size: "H10", shape: "51", A: 520, B: 220, C: 130, length: 1650 }] },
    ],
  },
  messages: { equal: "{letter} {side} is the member's own size: no cover is left, ask the designer" },
  ofWords: memberSize,
  checkRow(facts, _context, report) {
    const sides = linkSides(facts);
    const member = sides === null ? null : facts.inWords(memberSize);
    if (sides === null || member === null) return;
    const side = sides.long === member.wide ? sides.long : sides.short === member.narrow ? sides.short : null;
    if (side === null) return;
    const letter = facts.dim("A") === side ? "A" : "B";
    report({ messageId: "equal", at: letter, values: { letter, side: { mm: side } }, cite: COVER_GEOMETRY });
  },
});
