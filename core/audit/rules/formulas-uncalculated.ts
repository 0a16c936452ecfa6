import type { BarFacts } from "../../bar/bar-facts";
import { doubtedResults } from "../../schedule/doubted-results";
import { isCellError } from "../../schedule/sheet";
import { counted } from "../../units/counted";
import { defineRule } from "../rule";

export default defineRule({
  code: "READ106",
  name: "formulas-uncalculated",
  severity: "doubtful",
  docs: {
    summary:
      "Cells of bar rows hold formulas without a result, or with one that the file does not vouch for.",
    why: "A file written by a program carries formulas without results, or with noughts in their place and the request to calculate when it is opened; read as they stand they would weigh nothing.",
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
      "formulas without a result in {cells} of {rows}, this one first: open the workbook in a spreadsheet program, save it, and check again",
    doubted:
      "formulas in {cells} of {rows}, this one first, whose stored results may be out of date, as the file asks to be calculated when it is opened: open it in a spreadsheet program, save it, and check again",
  },
  checkSheet(sheet, _context, report) {
    const waiting = sheet.answers.those(uncalculated);
    const [first] = waiting;
    if (first !== undefined)
      report({
        messageId: "waiting",
        outcome: "unsure",
        place: { row: first.facts.row.row, column: first.answer[0] ?? 0 },
        values: amounts(
          waiting.reduce((sum, { answer }) => sum + answer.length, 0),
          waiting.length,
        ),
      });
    const doubted = doubtedResults(sheet.sheet, sheet.reading);
    if (doubted === null) return;
    const { first: place, cells, rows } = doubted;
    report({ messageId: "doubted", outcome: "unsure", place, values: amounts(cells, rows) });
  },
});

const amounts = (cells: number, rows: number) => ({
  cells: counted(cells, "cell"),
  rows: counted(rows, "bar row"),
});

/** Columns of the row whose formulas have no result. */
function uncalculated({ row }: BarFacts): readonly number[] | null {
  if (row.problems === null) return null;
  const waiting = row.problems.filter(({ typed }) => isCellError(typed) && typed.uncalculated === true);
  return waiting.length === 0 ? null : waiting.map(({ column }) => column);
}
