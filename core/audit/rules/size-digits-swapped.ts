import { defineRule } from "../rule";
import { swappedSize } from "../size-slips";

export default defineRule({
  code: "SIZE102",
  name: "size-digits-swapped",
  severity: "off-standard",
  needs: "unknown size",
  docs: {
    summary: "The size is no bar of the standard, but is one with its two digits the other way round.",
    why: "21 for 12 or 61 for 16 is the commonest slip of a hand that types sizes all day.",
    failing: [{ rows: [{ size: "H21", shape: "00", A: 1000, length: 1000 }] }],
    passing: [{ rows: [{ size: "H12", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: { swapped: 'size "{size}" is no bar of {standard}; {meant} is; ask the designer which is meant' },
  checkRow(facts, context, report) {
    const { row } = facts;
    if (row.size?.bar || row.sizeTyped === null) return;
    const meant = swappedSize(row.sizeTyped, context.standard);
    if (meant === null) return;
    report({
      messageId: "swapped",
      at: "size",
      values: { size: row.sizeTyped, standard: context.standard.id, meant: meant.size },
      cite: meant.bar.cite,
    });
  },
});
