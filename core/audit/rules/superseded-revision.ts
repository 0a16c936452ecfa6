import type { BarFacts } from "../../bar/bar-facts";
import { saying } from "../../bar/said-words";
import { BookRevisions } from "../book-revisions";
import { isLaterRevision } from "../revision-order";
import { defineRule } from "../rule";

const saysWithdrawn = saying(/\bsupersed|\bdeleted\b|\bcancelled\b|\bwithdrawn\b/);

export default defineRule({
  code: "REV101",
  name: "superseded-revision",
  severity: "unsafe",
  docs: {
    summary:
      "A later revision of the mark, or of the sheet, stands in the workbook, or the row calls itself superseded.",
    why: "Old and new bars both get cut, and the member may be built with the old ones. A sheet is a revision of another by the schedule reference and revision of its title block, or by its name (Culvert rev A, Culvert rev B); rows by their own revision letter.",
    failing: [
      {
        rows: [
          { mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "A" },
          { mark: "04", size: "H16", shape: "00", A: 1500, length: 1500, revision: "B" },
        ],
      },
      {
        sheets: {
          "Culvert rev A": [{ mark: "04", size: "H16", shape: "00", A: 1000, length: 1000 }],
          "Culvert rev B": [{ mark: "04", size: "H16", shape: "00", A: 1500, length: 1500 }],
        },
      },
    ],
    passing: [
      {
        sheets: {
          "Culvert rev A": [{ mark: "04", size: "H16", shape: "00", A: 1000, length: 1000 }],
          "Pump house rev B": [{ mark: "04", size: "H16", shape: "00", A: 1500, length: 1500 }],
        },
      },
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
    gone: "revision {revision} of mark {mark} is superseded: revision {later} in {where} has no such mark",
    unmarked: "this bar is of revision {revision}, superseded by revision {later} in {where}",
    said: "mark {mark} is noted as superseded, but still counts",
  },
  checkSheet(sheet, _context, report) {
    const revisions = BookRevisions.of(sheet.book);
    const laterSheets = revisions.laterSheets(sheet);
    const isAnyLater = laterSheets !== null || revisions.knowsRowsOf(sheet);
    const asked = isAnyLater ? sheet.bars : sheet.answers.those(saysItIsOld).map(({ facts }) => facts);
    for (const facts of asked) {
      const { row } = facts;
      if (row.struckThrough) continue;
      const mark = row.mark ?? "";
      const onLater = laterSheets?.barOf(facts);
      const later = revisions.latestRow(facts);
      if (laterSheets !== null && (onLater !== undefined || laterSheets.isReissue)) {
        const { revision, later: by, name } = laterSheets;
        const where = onLater === undefined ? `sheet ${name}` : placeOf(onLater, facts);
        const messageId = onLater !== undefined ? "later" : row.mark === null ? "unmarked" : "gone";
        const at = facts.has("revision") ? "revision" : "mark";
        report({ messageId, row: facts, at, values: { revision, mark, later: by, where } });
      } else if (
        later !== undefined &&
        later !== facts &&
        isLaterRevision(later.row.revision, row.revision)
      ) {
        const values = {
          revision: row.revision ?? "-",
          mark,
          later: later.row.revision ?? "",
          where: placeOf(later, facts),
        };
        report({ messageId: "later", row: facts, at: "revision", values });
      } else if (saysItIsOld(facts)) {
        report({ messageId: "said", row: facts, at: "remark", values: { mark } });
      }
    }
  },
});

function saysItIsOld(facts: BarFacts): true | null {
  return facts.row.remark !== null && facts.inWords(saysWithdrawn) ? true : null;
}

function placeOf(later: BarFacts, facts: BarFacts): string {
  const { sheet } = later.sheet;
  return `${later.sheet === facts.sheet ? "" : `sheet ${sheet.name}, `}row ${sheet.top + later.row.row + 1}`;
}
