import { MarkIndex } from "../mark-index";
import { isLaterRevision } from "../revision-order";
import type { RowFacts } from "../row-facts";
import { defineRule } from "../rule";
import { saying } from "../said-words";
import type { BookFacts } from "../sheet-facts";

const saysWithdrawn = saying(/\bsupersed|\bdeleted\b|\bcancelled\b|\bwithdrawn\b/);

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
    const latest = latestByMark(sheet.book);
    for (const facts of sheet.bars) {
      const { row } = facts;
      if (row.struckThrough) continue;
      const mark = row.mark ?? "";
      const { markKey } = facts;
      const later = latest === null || markKey === null ? undefined : latest.get(row.member, markKey);
      if (later !== undefined && later !== facts && isLaterRevision(later.row.revision, row.revision)) {
        const where = `${later.sheet === facts.sheet ? "" : `sheet ${later.sheet.sheet.name}, `}row ${later.sheet.sheet.top + later.row.row + 1}`;
        const values = { revision: row.revision ?? "-", mark, later: later.row.revision ?? "", where };
        report({ messageId: "later", row: facts, at: "revision", values });
      } else if (row.remark !== null && facts.inWords(saysWithdrawn)) {
        report({ messageId: "said", row: facts, at: "remark", values: { mark } });
      }
    }
  },
});

const indexes = new WeakMap<BookFacts, MarkIndex<RowFacts> | null>();

/** The latest revision of each mark over the book, worked out once; null where all revisions are one. */
function latestByMark(book: BookFacts): MarkIndex<RowFacts> | null {
  const known = indexes.get(book);
  if (known !== undefined) return known;
  const first = book.sheets[0]?.bars[0]?.row.revision ?? null;
  const alike = book.sheets.every(({ bars }) => bars.every(({ row }) => row.revision === first));
  const index = alike ? null : new MarkIndex<RowFacts>();
  if (index !== null) for (const { bars } of book.sheets) for (const facts of bars) keepLatest(index, facts);
  indexes.set(book, index);
  return index;
}

function keepLatest(latest: MarkIndex<RowFacts>, facts: RowFacts): void {
  const { markKey, row } = facts;
  if (markKey === null || row.struckThrough) return;
  const known = latest.keep(row.member, markKey, facts);
  if (known !== facts && isLaterRevision(row.revision, known.row.revision))
    latest.replace(row.member, markKey, facts);
}
