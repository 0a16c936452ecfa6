import { compiledShape } from "../../shapes/compiled-shape";
import { defineRule } from "../rule";

export default defineRule({
  code: "BEND106",
  name: "many-bends",
  severity: "note",
  docs: {
    summary: "The bar has so many bends that it may not come out within tolerance. Closed links are exempt.",
    why: "Each bend adds its own error; from five on, the standard itself calls it impractical.",
    failing: [
      { rows: [{ size: "H12", shape: "64", A: 300, B: 300, C: 300, D: 300, E: 300, F: 300, length: 1975 }] },
    ],
    passing: [{ rows: [{ size: "H12", shape: "44", A: 300, B: 300, C: 300, D: 300, E: 300, length: 1400 }] }],
  },
  messages: { many: "{bends} bends: from {limit} on a shape may be impractical within tolerance" },
  ofKind({ definition, isPath }, { standard: { manyBends } }) {
    const template = definition === null ? null : compiledShape(definition).template;
    const bends = template?.kind === "planar" ? template.turns.length : 0;
    return manyBends !== null && (isPath || bends >= manyBends.value);
  },
  checkRow(facts, context, report) {
    const { manyBends } = context.standard;
    const { bendCount: bends } = facts;
    if (manyBends === null || bends === null || bends < manyBends.value) return;
    if (facts.definition?.closed) return;
    report({
      messageId: "many",
      at: "shape",
      values: { bends, limit: manyBends.value },
      cite: manyBends.cite,
    });
  },
});
