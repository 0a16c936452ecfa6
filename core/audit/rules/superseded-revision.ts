import { isLaterRevision } from "../revision-order";
import type { RowFacts } from "../row-facts";
import { defineRule } from "../rule";

export default defineRule({
  code: "REV101",
  name: "superseded-revision",
  severity: "unsafe",
  docs: {
    summary: "A later revision of the same mark stands in the workbook, or the row calls itself superseded.",
    why: "Old and new bars both get cut, and the member may be built with the old ones.",
    failing: [
      {
        rows: [
          { mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "A" },
          { mark: "04", size: "H16", shape: "00", A: 1500, length: 1500, revision: "B" },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "A" },
          { mark: "05", size: "H16", shape: "00", A: 1500, length: 1500, revision: "B" },
        ],
      },
    ],
  },
  messages: {
    later: "revision {revision} of mark {mark} is superseded by revision {later} in {where}",
    said: "mark {mark} is noted as superseded, but still counts",
  },
  checkSheet(sheet, _context, report) {
    const latest = new Map<string, RowFacts>();
    for (const other of sheet.book.sheets) {
      if (!other.has("revision")) continue;
      for (const facts of other.bars) keepLatest(latest, facts);
    }
    for (const facts of sheet.bars) {
      const { row } = facts;
      if (row.struckThrough) continue;
      const mark = row.mark ?? "";
      const key = keyOf(facts);
      const later = key === null ? undefined : latest.get(key);
      if (later !== undefined && later !== facts && isLaterRevision(later.row.revision, row.revision)) {
        const where = `${later.sheet === facts.sheet ? "" : `sheet ${later.sheet.sheet.name}, `}row ${later.sheet.sheet.top + later.row.row + 1}`;
        const values = { revision: row.revision ?? "-", mark, later: later.row.revision ?? "", where };
        report({ messageId: "later", row: facts, at: "revision", values });
      } else if (/\bsupersed|\bdeleted\b|\bcancelled\b|\bwithdrawn\b/.test(facts.words)) {
        report({ messageId: "said", row: facts, at: "remark", values: { mark } });
      }
    }
  },
});

function keepLatest(latest: Map<string, RowFacts>, facts: RowFacts): void {
  const key = keyOf(facts);
  if (key === null || facts.row.struckThrough) return;
  const known = latest.get(key);
  if (known === undefined || isLaterRevision(facts.row.revision, known.row.revision)) latest.set(key, facts);
}

function keyOf({ markKey, row }: RowFacts): string | null {
  return markKey === null ? null : `${row.member ?? ""}\n${markKey}`;
}
