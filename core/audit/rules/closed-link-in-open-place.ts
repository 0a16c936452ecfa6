import { saying } from "../../bar/said-words";
import { defineRule } from "../rule";

const saysOpen = saying(
  /\bopen(?:[- ]top(?:ped)?)? (?:link|tie|stirrup)|\bu[- ]?(?:bar)?\s*(?:\+|and|with)\s*cap|\bcapping (?:bar|link)/,
);

export default defineRule({
  code: "SHAPE116",
  name: "closed-link-in-open-place",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "A closed link is scheduled where the remark asks for an open one with a cap.",
    why: "A closed link cannot be put over a cage that is already in place.",
    failing: [
      {
        rows: [
          { size: "H10", shape: "51", A: 500, B: 300, C: 130, length: 1775, remark: "open link with cap" },
        ],
      },
    ],
    passing: [
      { rows: [{ size: "H10", shape: "51", A: 500, B: 300, C: 130, length: 1775, remark: "closed" }] },
    ],
  },
  messages: { closed: "shape {code} is a closed link, but the remark asks for an open one" },
  ofWords: saysOpen,
  checkRow(facts, _context, report) {
    const { definition, row } = facts;
    if (row.remark === null || definition?.closed !== true) return;
    if (!facts.inWords(saysOpen)) return;
    report({ messageId: "closed", outcome: "unsure", at: "shape", values: { code: definition.code } });
  },
});
