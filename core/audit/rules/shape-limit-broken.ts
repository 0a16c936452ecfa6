import { tightWidth } from "../../bar/radius-of-width";
import type { DimLetter } from "../../standards/port";
import { defineRule } from "../rule";
import { isEndLegLimit, isHookTailLimit, isRadiusLimit, isWidthOfBend } from "../shape-limit-kinds";

export default defineRule({
  code: "SHAPE107",
  name: "shape-limit-broken",
  severity: "off-standard",
  needs: "broken limit",
  docs: {
    summary: "A dimension breaks a limit that the standard prints beside the shape.",
    why: "Outside its limits the shape's formula does not hold, and the bar may not be made as drawn.",
    failing: [{ rows: [{ size: "H12", shape: "33", A: 150, B: 80, C: 120, length: 625 }] }],
    passing: [{ rows: [{ size: "H12", shape: "33", A: 200, B: 80, C: 140, length: 775 }] }],
  },
  messages: {
    below: "{letter} {actual} breaks the limit {limit} of shape {code} for {size}: at least {bound}",
    above: "{letter} {actual} breaks the limit {limit} of shape {code} for {size}: at most {bound}",
    unequal: "{letter} {actual} breaks {limit} of shape {code}: {bound}",
  },
  checkRow(facts, _context, report) {
    const tight = tightWidth(facts);
    for (const limit of facts.brokenLimits) {
      // the former's rule speaks of a width that is too narrow for the bend across it
      if (tight?.letter === limit.letter && isWidthOfBend(limit)) continue;
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
          // the brackets of the free leg are the print's own
          limit: text.replace(/\((\w)\)/g, "$1"),
          code: facts.row.shape ?? "",
          size: facts.sizeName,
        },
        cite,
      });
    }
  },
});
