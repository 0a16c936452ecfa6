import { defineRule } from "../rule";
import { wrongSizedSums, wrongTotals } from "../wrong-sized-sums";

export default defineRule({
  code: "SUM111",
  name: "summary-differs",
  severity: "off-standard",
  docs: {
    summary: "A sum by bar size is not that of the bars of that size in the list.",
    why: "Steel is ordered by size from this line: one size is short on site, another is paid for twice. It takes a list with a summary by size: no small table can show it.",
    failing: [],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 }] }],
  },
  messages: {
    differs: "the {what} of {size} is given as {typed}, but the bars of the list make {sum}",
    total: "the total is given as {typed}, but the sizes above or beside it add up to {sum}",
    crossing: "{typed} fits neither the total of its row nor that of its column; both come out with {sum}",
  },
  checkSheet(sheet, context, report) {
    for (const { row, column, what, size, typed, sums } of wrongSizedSums(sheet, context.standard))
      report({
        messageId: "differs",
        place: { row, column },
        values: { what, size, typed, sum: sums[0] ?? 0 },
      });
    for (const { row, column, typed, sums, isCrossing } of wrongTotals(sheet, context.standard)) {
      const messageId = isCrossing === true ? "crossing" : "total";
      report({ messageId, place: { row, column }, values: { typed, sum: sums[0] ?? 0 } });
    }
  },
});
