import type { RowFacts } from "../row-facts";
import { defineRule } from "../rule";
import { firstDifference } from "../same-bar";
import type { SheetFacts } from "../sheet-facts";

export default defineRule({
  code: "MARK104",
  name: "same-bar-in-two-lists",
  severity: "doubtful",
  docs: {
    summary: "The same bar of the same member and mark stands in two lists.",
    why: "Starters are often listed with the foundation and again with the column, and then cut twice.",
    failing: [
      {
        sheets: {
          Foundation: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
          Column: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
        },
      },
    ],
    passing: [
      {
        sheets: {
          Foundation: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
          Column: [{ member: "C1", mark: "S2", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
        },
      },
    ],
  },
  messages: { twice: "mark {mark} of {member} stands in {where} too: is it counted twice?" },
  checkSheet(sheet, _context, report) {
    const place = sheet.book.sheets.indexOf(sheet);
    const seen = new Map<string, RowFacts>();
    for (const other of sheet.book.sheets.slice(0, place)) addBars(seen, other);
    for (const facts of sheet.bars) {
      const key = keyOf(facts);
      if (key === null) continue;
      const first = seen.get(key);
      if (first === undefined) {
        seen.set(key, facts);
        continue;
      }
      const sameList = first.sheet === facts.sheet && first.row.table === facts.row.table;
      if (
        sameList ||
        firstDifference(first.row, facts.row) !== null ||
        first.row.revision !== facts.row.revision
      )
        continue;
      const where = `${first.sheet === facts.sheet ? "" : `sheet ${first.sheet.sheet.name}, `}row ${first.sheet.sheet.top + first.row.row + 1}`;
      report({
        messageId: "twice",
        row: facts,
        at: "mark",
        values: { mark: facts.row.mark ?? "", member: facts.row.member ?? "", where },
      });
    }
  },
});

function addBars(seen: Map<string, RowFacts>, sheet: SheetFacts): void {
  for (const facts of sheet.bars) {
    const key = keyOf(facts);
    if (key !== null && !seen.has(key)) seen.set(key, facts);
  }
}

function keyOf({ markKey, row }: RowFacts): string | null {
  return markKey === null || row.member === null ? null : `${row.member}\n${markKey}`;
}
