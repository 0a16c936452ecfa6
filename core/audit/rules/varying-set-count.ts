import { defineRule } from "../rule";

export default defineRule({
  code: "SUM107",
  name: "varying-set-count",
  severity: "off-standard",
  needs: "varying",
  docs: {
    summary: "A set of varying bars has another number of lengths than bars.",
    why: "From 1200 to 1800 in steps of 50 there are 13 lengths; with 12 bars one of them is not made.",
    failing: [
      { rows: [{ size: "H12", shape: "00", A: "1200-1800 step 50", members: 1, each: 12, total: 12 }] },
    ],
    passing: [
      { rows: [{ size: "H12", shape: "00", A: "1200-1800 step 50", members: 1, each: 13, total: 13 }] },
    ],
  },
  messages: { differs: "{from} to {to} in steps of {step} are {lengths} lengths, but {each} bars are given" },
  checkRow(facts, _context, report) {
    const { varying, each, total, members } = facts.row;
    const count = each ?? (members === null || members === 1 ? total : null);
    if (!varying || varying.lengths === null || count === null) return;
    const { from, to, step, lengths } = varying;
    if (from === null || to === null || step === null || count % lengths === 0) return;
    report({
      messageId: "differs",
      at: each === null ? "total" : "each",
      values: { from: { mm: from }, to: { mm: to }, step: { mm: step }, lengths, each: count },
    });
  },
});
