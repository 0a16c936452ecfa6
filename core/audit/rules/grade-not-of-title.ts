import { gradeOffTitle } from "../../bar/grade-of-title";
import { defineRule } from "../rule";

const bar = (grade: string) => ({ size: "16", shape: "00", A: 2000, length: 2000, grade });

export default defineRule({
  code: "GRADE109",
  name: "grade-not-of-title",
  severity: "doubtful",
  docs: {
    summary:
      "One row alone has another grade than the sheet gives all bars, and all other rows have that one.",
    why: "Where a title says that all bars are of one steel, a row of another is a slip or an exception that nobody was told of: the wrong steel is as long and as heavy as the right one, and no sum shows it. It takes a sheet that says its steel: no small table can show it.",
    failing: [],
    passing: [{ rows: [...Array.from({ length: 5 }, () => bar("B500B")), bar("B500C")] }],
  },
  messages: {
    other:
      'grade "{typed}" stands in this row alone, where {cell} and the other {others} rows have {usual}: ask the designer',
  },
  checkSheet(sheet, _context, report) {
    const off = gradeOffTitle(sheet);
    if (off === null) return;
    const { facts, typed, usual, others, cell } = off;
    report({
      messageId: "other",
      outcome: "unsure",
      row: facts,
      at: "grade",
      values: { typed, cell, others, usual },
    });
  },
});
