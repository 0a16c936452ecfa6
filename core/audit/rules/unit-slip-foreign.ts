import { defineRule } from "../rule";
import { slipReport } from "../slip-report";

export default defineRule({
  code: "UNIT103",
  name: "unit-slip-foreign",
  severity: "off-standard",
  needs: "slip of unit",
  docs: {
    summary: "A figure was typed in another unit: centimetres for metres, inches or feet for millimetres.",
    why: "A drawing in one unit and a list in another meet in the yard, where nobody can tell them apart.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 34.4 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: {
    slip: "{field} {from} would agree with the rest of the row as {to}: another unit by a factor of {factor}",
    read: "{field} {from} agrees with the rest of the row as {to}, and is read and weighed so: another unit by a factor of {factor}",
    open: "{field} {from} is unlike its column, and {to} may be meant: correct the cell; until then it is not used",
  },
  fixes: { correct: { label: "change {field} to {to}", safety: "needs-review" } },
  checkRow(facts, _context, report) {
    const found = slipReport(facts, [100, 25.4, 12, 304.8]);
    if (found !== null) report(found);
  },
});
