import { rowsTwice } from "../../bar/rows-twice";
import { defineRule } from "../rule";

const bar = (mark: string, length: number, total: number) => ({
  ...{ mark, size: "H16", shape: "00", A: length, length, members: 1, each: total, total },
});
const LIST = Array.from({ length: 12 }, (_, index) => bar(String(index + 1), 1000 + 50 * index, 10 + index));

export default defineRule({
  code: "MARK105",
  name: "row-entered-twice",
  severity: "doubtful",
  docs: {
    summary: "A row of the list repeats another with the same mark, bar and number.",
    why: "A row that was copied or read out twice is cut, bought and paid twice.",
    failing: [{ rows: [...LIST, bar("4", 1150, 13)] }],
    passing: [{ rows: [...LIST, bar("13", 1150, 13)] }],
  },
  messages: {
    ways: "the row is word for word that of row {first} and numbered on: are these the bars of both ways?",
    alike: "the row is word for word that of row {first}: is it entered twice?",
    twice: "mark {mark} stands in row {first} too, the same bar and as many: is it entered twice?",
  },
  checkSheet(sheet, _context, report) {
    for (const { first, again, by } of rowsTwice(sheet)) {
      const values = { mark: again.row.mark ?? "", first: String(sheet.sheet.top + first.row.row + 1) };
      if (by === "mark") report({ messageId: "twice", outcome: "unsure", row: again, at: "mark", values });
      else if (by === "ways")
        report({ messageId: "ways", severity: "note", outcome: "unsure", row: again, at: "member", values });
      else report({ messageId: "alike", outcome: "unsure", row: again, at: "member", values });
    }
  },
});
