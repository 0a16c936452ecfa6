import type { BarFacts } from "../../bar/bar-facts";
import { isSumOfLegs } from "../../bar/sum-of-legs";
import { hasLengthsElsewhere } from "../kept-elsewhere";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN109",
  name: "lengths-are-sums",
  severity: "note",
  docs: {
    summary: "Most lengths of bent bars are the sums of their legs, and not the lengths to cut.",
    why: "Lists of several countries give the length so. A bar cut to it comes out longer than its legs by what the bends take up, mostly in its last leg, and its mass is told a little high.",
    failing: [
      {
        standard: "ACI318:2019",
        rows: [
          { size: "#5", shape: "12in +90 40in", length: "52in" },
          { size: "#6", shape: "16in +90 60in", length: "76in" },
          { size: "#8", shape: "20in +90 80in +90 20in", length: "120in" },
        ],
      },
    ],
    passing: [
      {
        standard: "ACI318:2019",
        rows: [
          { size: "#5", shape: "12 +90 40", length: "50 1/2in" },
          { size: "#5", shape: "14 +90 40", length: "52 1/2in" },
          { size: "#5", shape: "16 +90 40", length: "54 1/2in" },
        ],
      },
    ],
  },
  messages: {
    sums: "{sums} of {bent} lengths of bent bars are the sums of their legs; the lengths to cut are shorter, by {most} at the most: {length} is {cut} to cut",
    elsewhere:
      "many lengths of bent bars are not what {standard} makes of their dimensions, and nobody chose it: the rows of the list are held against each other; choose the standard that it is written to",
  },
  checkSheet(sheet, context, report) {
    if (!sheet.habits.lengthsAreSums) {
      if (hasLengthsElsewhere(sheet.habits, context))
        report({ messageId: "elsewhere", outcome: "unsure", values: { standard: context.standard.id } });
      return;
    }
    const sums = sheet.answers.those(sumAndCut);
    let worst: SumAndCut | null = null;
    for (const { answer } of sums) {
      const { length, cut } = answer;
      if (worst === null || length - cut > worst.length - worst.cut) worst = { length, cut };
    }
    if (worst === null) return;
    report({
      messageId: "sums",
      values: {
        sums: sums.length,
        bent: sheet.answers.count(isBentWithLength),
        most: { mm: worst.length - worst.cut },
        length: { mm: worst.length },
        cut: { mm: worst.cut },
      },
    });
  },
});

/** mm */
interface SumAndCut {
  readonly length: number;
  readonly cut: number;
}

function sumAndCut(facts: BarFacts): SumAndCut | null {
  if (!isBentWithLength(facts) || !isSumOfLegs(facts)) return null;
  const length = facts.row.length ?? 0;
  return { length, cut: facts.cut?.length ?? length };
}

function isBentWithLength({ row, bendCount }: BarFacts): boolean {
  return row.length !== null && (bendCount ?? 0) > 0;
}
