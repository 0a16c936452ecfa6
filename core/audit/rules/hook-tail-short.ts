import type { DimLetter } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { lengthLengthened } from "../carry-along";
import { hasEndsElsewhere } from "../kept-elsewhere";
import { defineRule } from "../rule";
import { isHookTailLimit } from "../shape-limit-kinds";

/** of a document that nobody chose and that the list does not keep to */
const ELSEWHERE = { severity: "note", outcome: "unsure" } as const;

export default defineRule({
  code: "BEND103",
  name: "hook-tail-short",
  severity: "unsafe",
  needs: "broken limit",
  asksOnce: true,
  docs: {
    summary: "The end of a link is shorter than the standard's least.",
    why: "A link holds by its ends alone: a short tail lets it open when the concrete cover goes. Between the least of any bend and that of links the end is bent all the same, and is short for the anchorage alone: a note.",
    failing: [{ rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 100, D: 100, length: 1525 }] }],
    passing: [{ rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 130, D: 130, length: 1575 }] }],
  },
  messages: {
    anchorage:
      "link end {letter} {actual} is below the {least} of links for {size}, and not below the {general} of other bends: ask the designer whether it holds",
    short: "link end {letter} {actual} is below the least {least} for {size}: ask the designer",
    longer:
      "link end {letter} {actual} is below the least {least} for {size}: so long it would need a bar of {after}, ask the designer",
  },
  checkRow(facts, context, report) {
    const { standard } = context;
    const isElsewhere = hasEndsElsewhere(facts.sheet.habits, context);
    const short = facts.brokenLimits.filter(isHookTailLimit);
    const general = standard.endLeg(facts.diameter ?? 0, "main");
    for (const limit of short) {
      const { actual, cite } = limit;
      const letter = limit.letter as DimLetter;
      const least = limit.least ?? 0;
      if (!isRefusal(general) && actual >= general.value.outside && general.value.outside < least) {
        report({
          messageId: "anchorage",
          severity: "note",
          at: letter,
          values: {
            ...{ letter, size: facts.sizeName },
            ...{ actual: { mm: actual }, least: { mm: least }, general: { mm: general.value.outside } },
          },
          cite,
        });
        continue;
      }
      const after = lengthLengthened(facts, short);
      report({
        messageId: after === null ? "short" : "longer",
        ...(isElsewhere ? ELSEWHERE : {}),
        at: letter,
        values: {
          ...{ letter, size: facts.sizeName },
          ...{ actual: { mm: actual }, least: { mm: least }, after: { mm: after ?? 0 } },
        },
        cite,
      });
    }
  },
});
