import { noBendAngle } from "../../shapes/resolve-shape";
import { leastSure } from "../../standards/citation";
import type { DimLetter } from "../../standards/port";
import { isRefusalOf } from "../../units/refusal";
import { courseOf } from "../course-of";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE113",
  name: "slope-impossible",
  severity: "off-standard",
  needs: "refused shape",
  docs: {
    summary: "The sloping leg is too short for the height or offset given: no angle fits.",
    why: "The three dimensions contradict each other, so at least one of them is wrong.",
    failing: [{ rows: [{ size: "H16", shape: "26", A: 500, B: 300, C: 500, D: 350, length: 1300 }] }],
    passing: [{ rows: [{ size: "H16", shape: "26", A: 500, B: 300, C: 500, D: 150, length: 1300 }] }],
  },
  messages: { impossible: "no bend angle from {from} to {to} degrees fits {dims}: {equation} cannot be met" },
  checkRow(facts, _context, report) {
    const { resolved, definition } = facts;
    if (!isRefusalOf(resolved, noBendAngle) || definition === null) return;
    const equation = String(resolved.values.equation);
    const letter = /^[A-K]/.exec(equation)?.[0] as DimLetter | undefined;
    report({
      messageId: "impossible",
      at: letter ?? "shape",
      values: resolved.values,
      cite: leastSure(definition.cite, ...courseOf(facts)),
    });
  },
});
