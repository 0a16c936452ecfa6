import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE106",
  name: "free-dimension-other",
  severity: "doubtful",
  docs: {
    summary: "Another dimension stands in brackets than the one that the code leaves free.",
    why: "The bracket says which leg takes up the tolerance; where another must, the standard wants code 99 and a sketch.",
    failing: [{ rows: [{ size: "H16", shape: "21", A: "(500)", B: 400, C: 500, length: 1350 }] }],
    passing: [{ rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: "(500)", length: 1350 }] }],
  },
  messages: { other: "{letter} stands in brackets, but {free} is the free dimension of shape {code}" },
  ofKind: ({ definition }) => definition !== null && definition.free !== null,
  checkRow(facts, _context, report) {
    const { definition, row } = facts;
    if (row.freeDims === "" || definition === null || definition.free === null) return;
    if (row.freeDims.includes(definition.free)) return;
    const letter = row.freeDims[0] as "A";
    report({
      messageId: "other",
      at: letter,
      values: { letter, free: definition.free, code: definition.code },
      cite: definition.cite,
    });
  },
});
