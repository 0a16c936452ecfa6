import { isInFeetInches } from "../../bar/feet-inches";
import { offStep, toNearest } from "../../bar/step";
import { defineRule } from "../rule";

export default defineRule({
  code: "DIM101",
  name: "dimension-off-step",
  severity: "off-standard",
  docs: {
    summary: "A dimension is not a multiple of the step that the standard schedules in.",
    why: "The yard sets its stops to the step; a finer figure is a false promise.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: 503, B: 400, length: 875 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 505, B: 400, length: 875 }] }],
  },
  messages: { off: "{letter} {value} is no multiple of {step}" },
  fixes: { nearest: { label: "change {letter} to {nearest}", safety: "needs-review" } },
  ofKind: ({ definition }, { standard }) => definition !== null && standard.dimensionStep !== null,
  checkRow(facts, context, report) {
    const step = context.standard.dimensionStep;
    const { definition } = facts;
    if (step === null || definition === null) return;
    for (const letter of definition.dims) {
      const value = facts.dim(letter);
      if (value === null || !offStep(value, step.value) || definition.counts?.includes(letter)) continue;
      // of feet and inches no step of millimetres is kept
      if (isInFeetInches(facts, letter)) continue;
      const down = Math.floor(value / step.value) * step.value;
      const nearest = toNearest(value, step.value);
      // between faces a longer side stands in the cover
      const [first, ...others] =
        facts.use === "link" ? [down] : [nearest, nearest > value ? down : down + step.value];
      const changeTo = (to: number) => ({
        values: {
          letter,
          value: { mm: value, typed: true as const },
          step: { mm: step.value },
          nearest: { mm: to },
        },
        fix: { id: "nearest" as const, edits: [{ at: letter, to }], mustHold: true as const },
      });
      report({
        messageId: "off",
        at: letter,
        ...changeTo(first),
        instead: others.map(changeTo),
        cite: step.cite,
      });
    }
  },
});
