import type { DimLetter } from "../../standards/port";
import { defineRule } from "../rule";
import { isEndLegLimit, isHookTailLimit, isRadiusLimit } from "../shape-limit-kinds";

export default defineRule({
  code: "SHAPE107",
  name: "shape-limit-broken",
  severity: "off-standard",
  needs: "broken limit",
  docs: {
    summary: "A dimension breaks a limit that the standard prints beside the shape.",
    why: "Outside its limits the shape's formula does not hold, and the bar may not be made as drawn.",
    failing: [{ rows: [{ size: "H16", shape: "13", A: 300, B: 90, C: 300, length: 650 }] }],
    passing: [{ rows: [{ size: "H16", shape: "13", A: 300, B: 100, C: 300, length: 650 }] }],
  },
  messages: {
    below: "{letter} {actual} breaks the limit {limit} of shape {code} for {size}: at least {bound}",
    above: "{letter} {actual} breaks the limit {limit} of shape {code} for {size}: at most {bound}",
    unequal: "{letter} {actual} breaks {limit} of shape {code}: {bound}",
  },
  checkRow(facts, _context, report) {
    for (const limit of facts.brokenLimits) {
      if (isEndLegLimit(limit) || isHookTailLimit(limit) || isRadiusLimit(limit)) continue;
      const { actual, least, most, cite, text } = limit;
      const letter = limit.letter as DimLetter;
      report({
        messageId: least === null ? "above" : most === null ? "below" : "unequal",
        at: letter,
        values: {
          letter,
          actual: { mm: actual },
          bound: { mm: least ?? most ?? 0 },
          limit: text,
          code: facts.row.shape ?? "",
          size: facts.sizeName,
        },
        cite,
      });
    }
  },
});
