import type { BarFacts } from "../../bar/bar-facts";
import { bendAngle, solveBendAngle } from "../../shapes/bend-angle";
import { noBendAngle } from "../../shapes/resolve-shape";
import { shapeValuesOf } from "../../shapes/shape-values";
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
    if (fitsOtherReading(facts)) return;
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

/** The drawing was not seen: dims that contradict each other by one reading of it may be right by the other. */
function fitsOtherReading({ definition, diameter, former, row }: BarFacts): boolean {
  const angles = Object.entries(definition?.otherReading?.angles ?? {});
  if (definition === null || diameter === null || former === null || angles.length === 0) return false;
  const values = shapeValuesOf(definition.dims, row.dims, diameter, former / 2);
  return angles.every(([name, given]) => !Number.isNaN(solveBendAngle(bendAngle(name, given), values)));
}
