import { CIRCULAR_TIE_LAP } from "../practice.data";
import { defineRule } from "../rule";

/** mm */
const LEAST_LAP = 150;

export default defineRule({
  code: "SHAPE117",
  name: "circle-lap-short",
  severity: "unsafe",
  docs: {
    summary: "The lap of a circular link is below 150 mm.",
    why: "A ring that opens at its lap holds nothing. The lap is the designer's figure: ask the designer.",
    failing: [{ rows: [{ size: "H10", shape: "75", A: 500, B: 100, length: 1650 }] }],
    passing: [{ rows: [{ size: "H10", shape: "75", A: 500, B: 300, length: 1850 }] }],
  },
  messages: { short: "a lap of {lap} is below {least}: ask the designer" },
  checkRow(facts, _context, report) {
    if (facts.pathKind !== "circle") return;
    const { path } = facts;
    if (path?.kind !== "circle" || path.lap >= LEAST_LAP) return;
    report({
      messageId: "short",
      outcome: "unsure",
      at: "B",
      values: { lap: { mm: path.lap }, least: { mm: LEAST_LAP } },
      cite: CIRCULAR_TIE_LAP,
    });
  },
});
