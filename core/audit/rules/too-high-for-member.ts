import { saying } from "../../bar/said-words";
import { heightInSlab } from "../bar-height";
import { coverIn, memberThickness } from "../member-size";
import { COVER_GEOMETRY } from "../practice.data";
import { defineRule } from "../rule";

const saysChair = saying(/\b(?:chairs?|stools?|spacers?|supports?)\b/);

/** a U-bar much wider than the slab is thick lies flat in it */
const LIES_FLAT_FROM = 1.5;

export default defineRule({
  code: "MEMBER106",
  name: "too-high-for-member",
  severity: "off-standard",
  docs: {
    summary: "A U-bar, chair or hook is higher than its slab or wall is thick, less the covers.",
    why: "It stands in the cover or out of the concrete, and the mat that it carries with it.",
    failing: [
      {
        rows: [
          { member: "slab 200 cover 25", size: "H10", shape: "21", A: 600, B: 170, C: 600, length: 1325 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { member: "slab 200 cover 25", size: "H10", shape: "21", A: 600, B: 150, C: 600, length: 1325 },
        ],
      },
      {
        rows: [
          { member: "slab 200 cover 25", size: "H10", shape: "21", A: 600, B: 900, C: 600, length: 2075 },
        ],
      },
    ],
  },
  messages: {
    high: "the bar stands {height} high in {thickness} of concrete, over the {limit} that {cover} cover leaves, unless it lies flat: ask the designer",
  },
  ofWords: memberThickness,
  checkRow(facts, _context, report) {
    const thickness = facts.inWords(memberThickness);
    if (thickness === null) return;
    const isChair = facts.inWords(saysChair);
    const height = heightInSlab(facts, isChair);
    if (height === null || (!isChair && height > thickness * LIES_FLAT_FROM)) return;
    const cover = facts.inWords(coverIn) ?? 0;
    const limit = thickness - 2 * cover;
    if (height <= limit) return;
    report({
      messageId: "high",
      outcome: "unsure",
      at: "B",
      values: {
        height: { mm: height },
        thickness: { mm: thickness },
        limit: { mm: limit },
        cover: { mm: cover },
      },
      cite: COVER_GEOMETRY,
    });
  },
});
