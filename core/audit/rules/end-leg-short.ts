import type { DimLetter } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { defineRule } from "../rule";
import { isEndLegLimit } from "../shape-limit-kinds";

const CLOSE = 1e-6;

export default defineRule({
  code: "BEND102",
  name: "end-leg-short",
  severity: "unbendable",
  docs: {
    summary: "An end leg is shorter than the least end projection.",
    why: "A leg that does not reach past the bending pin cannot be pushed round, and has no straight to anchor.",
    failing: [
      { rows: [{ size: "H16", shape: "21", A: 125, B: 400, C: 300, length: 775 }] },
      { rows: [{ size: "H16", shape: "125 +90 400", length: 500 }] },
    ],
    passing: [{ rows: [{ size: "H16", shape: "21", A: 130, B: 400, C: 300, length: 775 }] }],
  },
  messages: {
    short: "end leg {letter} {actual} is below the least {least} for {size} ({limit})",
    path: "an end leg of {actual} is below the least {least} for {size}",
  },
  fixes: { least: { label: "lengthen {letter} to {least}", safety: "needs-review" } },
  checkRow(facts, context, report) {
    const size = facts.sizeName;
    for (const limit of facts.brokenLimits) {
      if (!isEndLegLimit(limit)) continue;
      const { actual, cite, text } = limit;
      const letter = limit.letter as DimLetter;
      const least = limit.least ?? 0;
      report({
        messageId: "short",
        at: letter,
        values: { letter, actual: { mm: actual }, least: { mm: least }, size, limit: text },
        cite,
        fix: { id: "least", edits: [{ at: letter, to: least }] },
      });
    }
    if (!facts.isPath) return;
    const { planarPath, diameter } = facts;
    if (planarPath === null || diameter === null || planarPath.turns.length === 0) return;
    const leg = context.standard.endLeg(diameter, facts.use);
    if (isRefusal(leg)) return;
    const least = leg.value.outside;
    for (const end of [planarPath.legs[0], planarPath.legs.at(-1)]) {
      // a standard hook brings its own extension
      if (end === undefined || end.hook !== undefined || end.length >= least - CLOSE) continue;
      report({
        messageId: "path",
        at: "shape",
        values: { actual: { mm: end.length }, least: { mm: least }, size },
        cite: leg.cite,
      });
    }
  },
});
