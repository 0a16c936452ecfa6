import type { BarFacts } from "../../bar/bar-facts";
import { isSumOfLegs } from "../../bar/sum-of-legs";
import { hasLengthsElsewhere, isLengthOwnWay, isWithinTables } from "../kept-elsewhere";
import { lengthRestsOn } from "../length-rests-on";
import { defineRule } from "../rule";
import { siteDeductionLength } from "../site-deduction-length";

export default defineRule({
  code: "LEN102",
  name: "length-differs",
  severity: "off-standard",
  needs: "other length",
  docs: {
    summary: "The typed length does not follow from the dimensions.",
    why: "The bar is cut to its length and bent to its dimensions: one of the two will not come out.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 900 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: {
    short: "length {length} is {difference} short of the {computed} that the dimensions need ({basis})",
    long: "length {length} is {difference} over the {computed} that the dimensions need ({basis})",
  },
  fixes: { computed: { label: "change the length to {computed}", safety: "needs-review" } },
  checkRow(facts, context, report) {
    const judged = facts.lengthJudgement;
    // measured by the list's own rows
    if (hasLengthsElsewhere(facts.sheet.habits, context)) return;
    // a length by site deductions is told apart
    if (judged.kind !== "differs" || siteDeductionLength(facts) !== null) return;
    // a habit of the whole sheet is told once
    if (facts.sheet.habits.lengthsAreSums && isSumOfLegs(facts)) return;
    const length = facts.row.length ?? 0;
    const { cut } = judged;
    const isByOffice = isByOfficesTable(facts, length - cut.length);
    const isOwnWay = isLengthOwnWay(facts, context);
    const isNote = isByOffice || isOwnWay;
    report({
      messageId: length < cut.length ? "short" : "long",
      at: "length",
      ...(isNote ? { severity: "note" as const } : {}),
      ...(isOwnWay ? { outcome: "unsure" as const } : {}),
      values: {
        length: { mm: length, typed: true },
        difference: { mm: Math.abs(length - cut.length) },
        computed: { mm: cut.length },
        basis: cut.basis,
      },
      cite: lengthRestsOn(facts, cut),
      ...(isNote ? {} : { fix: { id: "computed" as const, edits: [{ at: "length", to: cut.length }] } }),
    });
  },
});

/** Of a code whose document prints no formula. */
function isByOfficesTable(facts: BarFacts, difference: number): boolean {
  return facts.definition?.formula === null && isWithinTables(facts, difference);
}
