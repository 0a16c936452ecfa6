import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE102",
  name: "shape-code-unpadded",
  severity: "note",
  docs: {
    summary: "A shape code of two digits is written with one: 1 for 01.",
    why: "Sorted and searched as text, 1 and 01 are two shapes.",
    failing: [{ rows: [{ size: "H16", shape: "1", A: 6000, length: 6000 }] }],
    passing: [{ rows: [{ size: "H16", shape: "01", A: 6000, length: 6000 }] }],
  },
  messages: { unpadded: "shape code {typed} is written without its leading nought" },
  fixes: { pad: { label: "write {code}", safety: "safe" } },
  ofKind: ({ kind: { shape } }) => shape?.length === 2 && shape.startsWith("0"),
  checkRow(facts, _context, report) {
    const { shape } = facts.row;
    if (shape === null || shape.length !== 2 || shape[0] !== "0") return;
    const typed = facts.typed("shape");
    if (typed === null || String(typed).trim().length !== 1) return;
    // a number format may show the nought
    if (facts.shown("shape")?.trim() === shape) return;
    report({
      messageId: "unpadded",
      at: "shape",
      values: { typed: String(typed).trim(), code: shape },
      fix: { id: "pad", edits: [{ at: "shape", to: shape }] },
    });
  },
});
