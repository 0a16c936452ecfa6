import { BAR_PROTECTION } from "../practice.data";
import { defineRule } from "../rule";

/** mm above which a projecting end is at the height of a body */
const HIGH_PROJECTION = 1200;

export default defineRule({
  code: "SITE101",
  name: "starter-unprotected",
  severity: "doubtful",
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
    const said = /\bproj\w*\D{0,10}?(\d{3,5})\b/.exec(facts.words)?.[1];
    const projection = Number(said);
    if (said === undefined || projection <= HIGH_PROJECTION || /\bcaps?\b|protect|mushroom/.test(facts.words))
      return;
    report({
      messageId: "open",
      at: "remark",
      values: { projection: { mm: projection }, limit: { mm: HIGH_PROJECTION } },
      cite: BAR_PROTECTION,
    });
  },
});
