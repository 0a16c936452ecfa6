import type { AnswersOfBars } from "../../bar/answers-of-bars";
import type { BarFacts } from "../../bar/bar-facts";
import { defineRule } from "../rule";

export default defineRule({
  code: "MARK102",
  name: "mark-missing",
  severity: "doubtful",
  docs: {
    summary: "A bar has no mark, while the sheet marks its bars.",
    why: "A bundle without a mark cannot be found on the drawing.",
    failing: [
      {
        rows: [
          { mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 },
          { mark: "02", size: "H16", shape: "00", A: 1500, length: 1500 },
          { mark: null, size: "H16", shape: "00", A: 2000, length: 2000 },
        ],
      },
    ],
    passing: [{ rows: [{ mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: { missing: "no mark is given" },
  checkSheet(sheet, _context, report) {
    const unmarked = sheet.answers.those(hasNoMark);
    if (unmarked.length === 0 || unmarked.length * 2 >= sheet.answers.length) return;
    const bentOnly = marksBentBarsOnly(sheet.answers);
    for (const { facts } of unmarked) {
      if (bentOnly && isStraight(facts)) continue;
      if (facts.row.problems?.some(({ field }) => field === "mark")) continue;
      report({ messageId: "missing", row: facts, at: "mark" });
    }
  },
});

function hasNoMark({ row }: BarFacts): true | null {
  return row.mark === null ? true : null;
}

/** Lists in which a straight bar goes by its size and length: no straight bar is marked. */
function marksBentBarsOnly(answers: AnswersOfBars): boolean {
  return answers.count(isStraight) > 1 && answers.count(isStraightWithMark) === 0;
}

function isStraight({ row }: BarFacts): boolean {
  return row.shape === "00" || (row.shape === null && row.dims.length === 0);
}

function isStraightWithMark(facts: BarFacts): boolean {
  return isStraight(facts) && facts.row.mark !== null;
}
