import { saying } from "../../bar/said-words";
import { BAR_PROTECTION } from "../practice.data";
import { defineRule } from "../rule";

/** mm above which a projecting end is at the height of a body */
const HIGH_PROJECTION = 1200;

const saysProtected = saying(/\bcaps?\b|protect|mushroom/);

export default defineRule({
  code: "SITE101",
  name: "starter-unprotected",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "Starter bars are noted to project far, and no caps or bend-over are named.",
    why: "People fall on open bar ends; long starters also sway and are bent by hand.",
    failing: [
      {
        rows: [{ size: "H20", shape: "11", A: 2500, B: 300, length: 2750, remark: "starter, projects 1500" }],
      },
    ],
    passing: [
      {
        rows: [
          { size: "H20", shape: "11", A: 2500, B: 300, length: 2750, remark: "starter, projects 1500, caps" },
        ],
      },
    ],
  },
  messages: { open: "starters projecting {projection} (over {limit}) name no caps or other protection" },
  checkRow(facts, _context, report) {
    if (facts.row.remark === null) return;
    const projection = facts.inWords(projectionSaid);
    if (projection === null || projection <= HIGH_PROJECTION || facts.inWords(saysProtected)) return;
    report({
      messageId: "open",
      at: "remark",
      values: { projection: { mm: projection }, limit: { mm: HIGH_PROJECTION } },
      cite: BAR_PROTECTION,
    });
  },
});

/** mm */
function projectionSaid(words: string): number | null {
  const said = /\bproj\w*\D{0,10}?(\d{3,5})\b/.exec(words)?.[1];
  return said === undefined ? null : Number(said);
}
