import { defineRule } from "../rule";
import { SLIP_MESSAGES, slipReport } from "../slip-report";

export default defineRule({
  code: "UNIT102",
  name: "unit-slip-thousand",
  severity: "off-standard",
  needs: "slip of unit",
  docs: {
    summary: "A figure is a thousand times too large or too small.",
    why: "Metres typed among millimetres look right in the cell, and every sum under them is wrong.",
    failing: [{ rows: among(0.875) }],
    passing: [{ rows: among(875) }],
  },
  messages: SLIP_MESSAGES,
  fixes: { correct: { label: "change {field} to {to}", safety: "needs-review" } },
  checkRow(facts, _context, report) {
    const found = slipReport(facts, [1000]);
    if (found !== null) report(found);
  },
});

function among(length: number) {
  const row = { size: "H16", shape: "11", A: 500, B: 400, length: 875 };
  return [row, row, row, { ...row, length }];
}
