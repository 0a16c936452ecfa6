import type { BarFacts } from "../../bar/bar-facts";
import { shortened } from "../../schedule/cells/longest-text";
import { remember } from "../../schedule/cells/remember";
import { type RemarkVoid, remarkVoid } from "../../schedule/cells/says-void";
import { saysWait } from "../../schedule/cells/says-wait";
import { BookRevisions } from "../book-revisions";
import { defineRule } from "../rule";

const saidBy = remember<string, RemarkVoid>(remarkVoid, () => null);

export default defineRule({
  code: "REV101",
  name: "superseded-revision",
  severity: "unsafe",
  docs: {
    summary:
      "A later revision of the mark, or of the sheet, stands in the workbook, or the row calls itself superseded.",
    why: "Old and new bars both get cut, and the member may be built with the old ones. A sheet is a revision of another by the schedule reference and revision of its title block, or by its name (Culvert rev A, Culvert rev B); rows by their own revision letter. What is superseded is in no total, cutting plan or ticket. A bar that its own remark takes out is a note.",
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
    later:
      "revision {revision} of mark {mark} is superseded by revision {later} in {where}: strike the row through",
    gone: "revision {revision} of mark {mark} is superseded: revision {later} in {where} has no such mark: strike the row through",
    unmarked:
      "this bar is of revision {revision}, superseded by revision {later} in {where}: strike the row through",
    asks: 'mark {mark} counts, though its remark "{remark}" may take it out: strike the row through, or write "deleted" alone, if the whole bar is meant',
    left: "mark {mark} is noted as superseded and is in no total",
  },
  checkSheet(sheet, _context, report) {
    const revisions = BookRevisions.of(sheet.book);
    const isAnyLater = revisions.laterSheets(sheet) !== null || revisions.knowsRowsOf(sheet);
    const asked = isAnyLater ? sheet.bars : sheet.answers.those(saysItIsOld).map(({ facts }) => facts);
    for (const facts of asked) {
      const { row } = facts;
      if (row.struckThrough) continue;
      const mark = row.mark ?? "";
      const found = revisions.replacementOf(facts);
      if (found !== null) {
        const { revision, later, bar, sheet: on } = found;
        const where = bar === undefined ? `sheet ${on.name}` : placeOf(bar, facts);
        const messageId = bar !== undefined ? "later" : row.mark === null ? "unmarked" : "gone";
        const at = facts.has("revision") ? "revision" : "mark";
        report({ messageId, row: facts, at, values: { revision, mark, later, where } });
      } else if (row.superseded === true && row.supersededBy == null) {
        const at = saidBy(row.remark ?? "") === "bar" ? "remark" : "size";
        // its own words keep it from being made
        report({ messageId: "left", severity: "note", row: facts, at, values: { mark } });
      } else if (row.remark !== null && saidBy(row.remark) === "perhaps" && !saysWait(row.remark)) {
        const values = { mark, remark: shortened(row.remark) };
        report({
          messageId: "asks",
          outcome: "unsure",
          severity: "doubtful",
          row: facts,
          at: "remark",
          values,
        });
      }
    }
  },
});

function saysItIsOld({ row }: BarFacts): true | null {
  if (row.superseded === true) return true;
  return row.remark !== null && saidBy(row.remark) !== null ? true : null;
}

function placeOf(later: BarFacts, facts: BarFacts): string {
  const { sheet } = later.sheet;
  return `${later.sheet === facts.sheet ? "" : `sheet ${sheet.name}, `}row ${sheet.top + later.row.row + 1}`;
}
