import type { BarFacts } from "../../bar/bar-facts";
import { defineRule } from "../rule";

/** share of the lengths that may be rounded further before the sheet rounds so throughout */
const RARE = 0.25;
/** mm */
const CLOSE = 1e-6;

export default defineRule({
  code: "LEN113",
  name: "length-rounded-further",
  severity: "note",
  docs: {
    summary:
      "A length is further from what its dimensions make than the other lengths of the sheet, yet within what some lists round by.",
    why: "Where the document prints no step a list may round up by its own, so that such a length is no fault. The bar is cut as typed and weighed by its dimensions: where the other rows are closer, look whether it was meant.",
    failing: [
      {
        standard: "DIN-EC2:2013",
        // a former of 48 mm: 300 + 1000 + 300 - 2 (2 x 36 - 30 pi/2) = 1550.3, up to the next 5 mm
        rows: [1000, 1500, 2000, 2500]
          .map((B) => ({ size: "12", shape: `300 +90 ${B} +90 300`, length: B + 555 }))
          .concat({ size: "12", shape: "300 +90 1200 +90 300", length: 1775 }),
      },
    ],
    passing: [
      {
        standard: "DIN-EC2:2013",
        rows: [1000, 1500, 2000, 2500].map((B) => ({
          size: "12",
          shape: `300 +90 ${B} +90 300`,
          length: B + 555,
        })),
      },
    ],
  },
  messages: {
    further:
      "length {length} is {difference} {side} the {computed} that the dimensions make, further than the other lengths of the sheet: it is cut as typed and weighed by its dimensions",
  },
  checkSheet(sheet, { standard }, report) {
    if (sheet.habits.standardMeant !== null) return;
    const far = sheet.answers.those(roundedFurther, standard.lengthRounding.step);
    const all = sheet.answers.count(fits);
    if (far.length === 0 || far.length === all || far.length > Math.max(1, RARE * all)) return;
    for (const { facts, answer: computed } of far) {
      const length = facts.row.length ?? 0;
      report({
        messageId: "further",
        outcome: "unsure",
        row: facts,
        at: "length",
        values: {
          length: { mm: length, typed: true },
          difference: { mm: Math.abs(length - computed) },
          side: length > computed ? "over" : "short of",
          computed: { mm: computed },
        },
        cite: standard.lengthRounding.cite,
      });
    }
  },
});

/** A typed length of a bent bar that follows from its dimensions. */
function fits({ isStraight, lengthJudgement }: BarFacts): boolean {
  return lengthJudgement.kind === "fits" && !isStraight;
}

/** mm that the dimensions make, where the length is more than a step from it. */
function roundedFurther(facts: BarFacts, step: number): number | null {
  const { computedLength: computed } = facts;
  if (computed === null || Math.abs((facts.row.length ?? 0) - computed) <= step + CLOSE) return null;
  const { former } = facts.row;
  // a former of another size bends to another length, and the list may go by the standard's own
  return fits(facts) && (former === null || former === facts.leastFormer?.value) ? computed : null;
}
