import { saying } from "../../bar/said-words";
import type { Citation } from "../../standards/citation";
import { defineRule } from "../rule";

/** mm: plain round bars above this are seldom rolled for reinforcement. */
const THICKEST_PLAIN = 20;
const saysDowel = saying(/\bdowels?\b/);
const CITE: Citation = {
  document: "sizes of plain round reinforcement in supply",
  provenance: "common practice",
};

export default defineRule({
  code: "SIZE103",
  name: "plain-size-unusual",
  severity: "doubtful",
  needs: "plain bar",
  docs: {
    summary: "The type letter and the size do not go together: a thick plain round bar.",
    why: "Plain rounds are rolled thin, for links; a thick one is more often a wrong letter than a real bar, unless it is said to be a dowel.",
    failing: [{ rows: [{ size: "R32", shape: "00", A: 3000, length: 3000 }] }],
    passing: [
      { rows: [{ size: "H32", shape: "00", A: 3000, length: 3000 }] },
      { rows: [{ size: "R25", shape: "00", A: 600, length: 600, remark: "dowel, greased" }] },
    ],
  },
  messages: { thick: "{size} is a plain round bar above {limit}: check the type letter" },
  checkRow(facts, _context, report) {
    const { diameter } = facts;
    if (diameter === null || diameter <= THICKEST_PLAIN || !facts.isPlain || facts.inWords(saysDowel)) return;
    report({
      messageId: "thick",
      at: "size",
      values: { size: facts.sizeName, limit: { mm: THICKEST_PLAIN } },
      cite: CITE,
    });
  },
});
