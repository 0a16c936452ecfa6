import { offRuns } from "../../bar/run-habit";
import { defineRule } from "../rule";

export default defineRule({
  code: "SUM112",
  name: "count-off-run",
  severity: "doubtful",
  docs: {
    summary: "The number of bars is not what run and spacing give, as the other rows of the list have it.",
    why: "Each office rounds its own way; a row that leaves the way of the others has a bar too many, one too few, or two figures exchanged. The number is the designer's: ask. It takes a list with a column of runs: no small table can show it.",
    failing: [],
    passing: [{ rows: [{ size: "H10", shape: "00", A: 2000, length: 2000, spacing: 150 }] }],
  },
  messages: {
    differs:
      "{count} bars at {spacing} over {run} should be {expected}, as {kept} of {tested} rows count: ask the designer",
    alone: "{count} bars at {spacing} over {run}: {expected} would follow; ask the designer",
  },
  checkSheet(sheet, _context, report) {
    for (const { facts, at, count, run, spacing, expected, kept, tested } of offRuns(sheet)) {
      const values = { count, spacing, run, expected, kept, tested };
      const messageId = kept === 0 ? "alone" : "differs";
      report({ messageId, outcome: "unsure", row: facts, at, values });
    }
  },
});
