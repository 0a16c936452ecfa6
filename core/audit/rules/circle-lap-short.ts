import { saying } from "../../bar/said-words";
import { compiledShape } from "../../shapes/compiled-shape";
import { CIRCULAR_TIE_LAP } from "../practice.data";
import { defineRule } from "../rule";

/** mm */
const LEAST_LAP = 150;

const saysWelded = saying(/\bweld/);

export default defineRule({
  code: "SHAPE117",
  name: "circle-lap-short",
  severity: "doubtful",
  docs: {
    summary: "The lap of a circular link is below the 6 in (150 mm) that ACI 318 asks of circular ties.",
    why: "A ring that opens at its lap holds nothing, unless it is welded. The lap is the designer's figure, and other documents ask for other laps: ask the designer.",
    failing: [{ rows: [{ size: "H10", shape: "75", A: 500, B: 100, length: 1650 }] }],
    passing: [
      { rows: [{ size: "H10", shape: "75", A: 500, B: 300, length: 1850 }] },
      { rows: [{ size: "H10", shape: "75", A: 500, B: 100, length: 1650, remark: "ring, lap welded 10d" }] },
    ],
  },
  messages: { short: "a lap of {lap} is below {least}: ask the designer" },
  ofKind: ({ definition, isPath }) =>
    isPath || (definition !== null && compiledShape(definition).template?.kind === "circle"),
  checkRow(facts, _context, report) {
    if (facts.pathKind !== "circle") return;
    const { path } = facts;
    if (path?.kind !== "circle" || path.lap >= LEAST_LAP || facts.inWords(saysWelded)) return;
    report({
      messageId: "short",
      outcome: "unsure",
      at: "B",
      values: { lap: { mm: path.lap }, least: { mm: LEAST_LAP } },
      cite: CIRCULAR_TIE_LAP,
    });
  },
});
