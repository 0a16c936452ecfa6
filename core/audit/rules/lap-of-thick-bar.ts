import { isLapped } from "../lap-said";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN111",
  name: "lap-of-thick-bar",
  severity: "doubtful",
  docs: {
    summary: "A bar is lapped that is thicker than the design code laps.",
    why: "The splitting force of thick bars side by side breaks the cover; they are coupled or welded, or lapped only under conditions that the designer names.",
    failing: [{ rows: [{ size: "H40", shape: "00", A: 12000, length: 12000, remark: "lap 1600" }] }],
    passing: [
      { rows: [{ size: "H32", shape: "00", A: 12000, length: 12000, remark: "lap 1600" }] },
      { rows: [{ size: "H40", shape: "00", A: 12000, length: 12000, remark: "coupler, no lap, ends sawn" }] },
    ],
  },
  messages: { thick: "{size} is lapped: bars over {limit} are as a rule not; ask the designer" },
  checkRow(facts, { standard }, report) {
    const { diameter } = facts;
    if (diameter === null || !isLapped(facts)) return;
    const rule = standard.detailing("lapped bars", diameter);
    const limit = rule?.value.atMost;
    if (rule === null || limit === undefined || diameter <= limit + 0.1) return;
    report({
      messageId: "thick",
      at: facts.row.remark === null ? "size" : "remark",
      values: { size: facts.sizeName, limit: { mm: limit } },
      cite: rule.cite,
    });
  },
});
