import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE115",
  name: "sketch-without-length",
  severity: "off-standard",
  docs: {
    summary: "A shape that is drawn for each bar has no length.",
    why: "No formula gives the length of a sketch: it must be scheduled, or written as a path.",
    failing: [{ rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: 300 }] }],
    passing: [{ rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: 300, length: 1200 }] }],
  },
  messages: { missing: "shape {code} has no formula, and no length is given" },
  ofKind: ({ definition }) => definition !== null && definition.path === null && definition.formula === null,
  checkRow(facts, _context, report) {
    const { definition, row } = facts;
    if (definition === null || definition.path !== null || definition.formula !== null) return;
    if (row.length !== null || row.varying || row.problems?.some(({ field }) => field === "length")) return;
    report({ messageId: "missing", at: "length", values: { code: definition.code }, cite: definition.cite });
  },
});
