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
    let cells = 0;
    let rows = 0;
    let first: { readonly row: number; readonly column: number } | null = null;
    for (const { row } of sheet.bars) {
      const waiting = row.problems?.filter(({ typed }) => isCellError(typed) && typed.uncalculated === true);
      if (waiting === undefined || waiting.length === 0) continue;
      rows += 1;
      cells += waiting.length;
      first ??= { row: row.row, column: waiting[0]?.column ?? 0 };
    }
    if (first === null) return;
    report({ messageId: "waiting", outcome: "unsure", place: first, values: { cells, rows } });
  },
});
