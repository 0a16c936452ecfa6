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
  checkRow(facts, _context, report) {
    const each = facts.row.each ?? facts.row.total;
    if (each === null || each % 2 !== 1) return;
    if (!facts.row.remarks?.layers.includes("EF") && !facts.inWords(saysBothFaces)) return;
    report({ messageId: "odd", at: facts.row.each === null ? "total" : "each", values: { each } });
  },
});
