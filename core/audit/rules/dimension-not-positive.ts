import { dimNotPositive } from "../../shapes/resolve-shape";
import type { DimLetter } from "../../standards/port";
import { isRefusalOf } from "../../units/refusal";
import { defineRule } from "../rule";

export default defineRule({
  code: "DIM102",
  name: "dimension-not-positive",
  severity: "unbendable",
  needs: "refused shape",
  docs: {
    summary: "A dimension that the shape needs is zero or below.",
    why: "A leg of nothing cannot be bent; a nought often stands for a figure that was to be filled in.",
    failing: [{ rows: [{ size: "H16", shape: "21", A: 500, B: 0, C: 500, length: 1000 }] }],
    passing: [{ rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] }],
  },
  messages: { none: "{letter} of shape {code} is {value}: it must be over 0, correct it" },
  checkRow(facts, _context, report) {
    const { resolved } = facts;
    if (!isRefusalOf(resolved, dimNotPositive)) return;
    const { values } = resolved;
    report({
      messageId: "none",
      at: values.letter as DimLetter,
      values,
      cite: facts.definition?.cite ?? null,
    });
  },
});
