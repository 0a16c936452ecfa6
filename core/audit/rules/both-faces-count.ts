import type { BarFacts } from "../../bar/bar-facts";
import { saying } from "../../bar/said-words";
import { defineRule } from "../rule";

const saysBothFaces = saying(/\bef\b|each face|both faces|\bb\.?f\.?\b/);

export default defineRule({
  code: "SUM105",
  name: "both-faces-count",
  severity: "doubtful",
  docs: {
    summary: "The remark says each face or both faces, but the number of bars is odd.",
    why: "Two equal faces give an even number: one face may be counted, or one bar be missing.",
    failing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 11, total: 11, remark: "EF" },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 12, total: 12, remark: "EF" },
        ],
      },
    ],
  },
  messages: { odd: "{each} bars for two faces is odd: are both faces counted?" },
  checkSheet(sheet, _context, report) {
    const odd = sheet.answers.those(oddForTwoFaces);
    if (odd.length === 0) return;
    const rows = new Map<number, number>();
    for (const { answer } of sheet.answers.those(numberOf)) rows.set(answer, (rows.get(answer) ?? 0) + 1);
    for (const { facts, answer: each } of odd) {
      // a number that other rows have too is that of a run of places, of which each face has its own bar
      const ofRun = (rows.get(each) ?? 0) > 1 ? { severity: "note" as const } : {};
      const at = facts.row.each === null ? "total" : "each";
      report({ messageId: "odd", ...ofRun, row: facts, at, values: { each } });
    }
  },
});

function numberOf({ row }: BarFacts): number | null {
  return row.each ?? row.total;
}

function oddForTwoFaces(facts: BarFacts): number | null {
  const each = numberOf(facts);
  if (each === null || each % 2 !== 1) return null;
  return facts.row.remarks?.layers.includes("EF") === true || facts.inWords(saysBothFaces) ? each : null;
}
