import { spacingSaid } from "../../bar/spacing-said";
import { CLEAR_SPACING } from "../practice.data";
import { defineRule } from "../rule";

/** mm */
const LEAST_CLEAR = 20;

export default defineRule({
  code: "SITE102",
  name: "bars-congested",
  severity: "unsafe",
  needs: "spacing",
  docs: {
    summary: "The clear distance between bars at the spacing given is below the bar's diameter or 20 mm.",
    why: "Concrete does not pass between them, and the bars do not bond. Ask the designer.",
    failing: [{ rows: [{ size: "H25", shape: "00", A: 3000, length: 3000, spacing: 45 }] }],
    passing: [{ rows: [{ size: "H25", shape: "00", A: 3000, length: 3000, spacing: 50 }] }],
  },
  messages: { close: "{size} at {spacing} leaves {clear} clear, below {least}: ask the designer" },
  checkRow(facts, _context, report) {
    const { diameter, row } = facts;
    const spacing = row.spacing ?? spacingSaid(facts);
    if (!spacing || diameter === null) return;
    const clear = spacing - diameter;
    // bars in bars, or a few mm: another unit, or no spacing
    if (clear <= 0 || spacing < LEAST_SPACING) return;
    const least = Math.max(diameter, LEAST_CLEAR);
    if (clear >= least) return;
    report({
      messageId: "close",
      outcome: "unsure",
      at: row.spacing === null ? "remark" : facts.has("spacing") ? "spacing" : "size",
      values: { size: facts.sizeName, spacing: { mm: spacing }, clear: { mm: clear }, least: { mm: least } },
      cite: CLEAR_SPACING,
    });
  },
});

/** mm: no bars are set out closer */
const LEAST_SPACING = 15;
