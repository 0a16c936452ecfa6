import { strayGrades } from "../../bar/stray-grades";
import { defineRule } from "../rule";

const bar = (grade: string) => ({ size: "16", shape: "00", A: 2000, length: 2000, grade });

export default defineRule({
  code: "GRADE107",
  name: "grade-stray",
  severity: "doubtful",
  docs: {
    summary: "One row alone has a grade that nobody knows, while all others have known ones written alike.",
    why: "A figure exchanged in a grade orders a steel that no mill rolls, or is taken for a weaker one. Which grade is meant only the designer can say.",
    failing: [{ rows: [...Array.from({ length: 5 }, () => bar("B500B")), bar("B550NC"), bar("B505B")] }],
    passing: [{ rows: [...Array.from({ length: 5 }, () => bar("B500B")), bar("B500C")] }],
  },
  messages: {
    stray:
      'grade "{typed}" stands in no other row and is none that is known; {like} may be meant: ask the designer',
  },
  checkSheet(sheet, _context, report) {
    for (const { facts, column, typed, like } of strayGrades(sheet)) {
      const place = { row: facts.row.row, column };
      report({ messageId: "stray", outcome: "unsure", place, values: { typed, like: like.join(" or ") } });
    }
  },
});
