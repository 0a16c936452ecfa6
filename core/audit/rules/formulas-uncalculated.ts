import type { BarFacts } from "../../bar/bar-facts";
import { isCellError } from "../../schedule/sheet";
import { defineRule } from "../rule";

export default defineRule({
  code: "READ106",
  name: "formulas-uncalculated",
  severity: "doubtful",
  docs: {
    summary: "Cells of bar rows hold formulas that no spreadsheet program has calculated yet.",
    why: "A file written by a program carries formulas without results; read as blank it would weigh nothing.",
    failing: [
      {
        rows: [
          {
            size: "H16",
            shape: "00",
            A: 1000,
            length: { error: "#N/A", uncalculated: true },
          },
        ],
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: {
    waiting:
      "{cells} cells in {rows} bar rows hold formulas without a result, this one first: open the workbook in a spreadsheet program, save it, and check again",
  },
  checkSheet(sheet, _context, report) {
    const waiting = sheet.answers.those(uncalculated);
    const [first] = waiting;
    if (first === undefined) return;
    const cells = waiting.reduce((sum, { answer }) => sum + answer.length, 0);
    report({
      messageId: "waiting",
      outcome: "unsure",
      place: { row: first.facts.row.row, column: first.answer[0] ?? 0 },
      values: { cells, rows: waiting.length },
    });
  },
});

/** Columns of the row whose formulas have no result. */
function uncalculated({ row }: BarFacts): readonly number[] | null {
  if (row.problems === null) return null;
  const waiting = row.problems.filter(({ typed }) => isCellError(typed) && typed.uncalculated === true);
  return waiting.length === 0 ? null : waiting.map(({ column }) => column);
}
