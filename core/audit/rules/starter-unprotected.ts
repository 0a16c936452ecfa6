import { saying } from "../../bar/said-words";
import { BAR_PROTECTION } from "../practice.data";
import { projectionSaid } from "../projection-said";
import { defineRule } from "../rule";

const saysProtected = saying(/\bcaps?\b|protect|mushroom/);

export default defineRule({
  code: "SITE101",
  name: "starter-unprotected",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "Starter bars are noted to project, and no caps or bend-over are named.",
    why: "In the United States every protruding bar is guarded, elsewhere as the site's own rules say: there it is a note. People fall on open bar ends of any length and thickness; long starters also sway and are bent by hand.",
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
  messages: { open: "starters projecting {projection} name no caps or other protection" },
  ofWords: projectionSaid,
  checkRow(facts, context, report) {
    if (facts.row.remark === null) return;
    const projection = facts.inWords(projectionSaid);
    if (projection === null || facts.inWords(saysProtected)) return;
    report({
      messageId: "open",
      // the law that is cited is that of the United States; what holds elsewhere is asked, not told
      ...(context.standard.unit === "in" ? {} : { severity: "note" as const }),
      at: "remark",
      values: { projection: { mm: projection } },
      cite: BAR_PROTECTION,
    });
  },
});
