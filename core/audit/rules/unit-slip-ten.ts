import { defineRule } from "../rule";
import { SLIP_MESSAGES, slipReport } from "../slip-report";

export default defineRule({
  code: "UNIT101",
  name: "unit-slip-ten",
  severity: "off-standard",
  needs: "slip of unit",
  docs: {
    summary: "A figure is ten times too large or too small.",
    why: "Centimetres typed among millimetres, or a nought too many, cut a bar that fits nothing.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 8750 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: SLIP_MESSAGES,
  fixes: { correct: { label: "change {field} to {to}", safety: "needs-review" } },
  checkRow(facts, _context, report) {
    const found = slipReport(facts, [10]);
    if (found !== null) report(found);
  },
});
