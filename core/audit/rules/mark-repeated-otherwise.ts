import type { BarFacts } from "../../bar/bar-facts";
import { MARKS_OF_MEMBERS } from "../../bar/identities.data";
import { firstDifference } from "../../bar/same-bar";
import { lineWords } from "../../schedule/line-words";
import { defineRule } from "../rule";

export default defineRule({
  code: "MARK101",
  name: "mark-repeated-otherwise",
  severity: "off-standard",
  docs: {
    summary: "The same mark names bars of different size, shape or dimensions.",
    why: "Whoever fixes mark 07 takes the first bundle with that tag.",
    failing: [
      {
        rows: [
          { mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
          { mark: "7", size: "H16", shape: "11", A: 550, B: 400, length: 925 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
          { mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        ],
      },
    ],
  },
  messages: {
    differs: "mark {mark} stands in {first} too, with another {difference}",
    ofMembers:
      "{count} of {all} rows have a mark that other bars have too, such as {mark}: the column seems to name members, so marks were not checked",
  },
  checkSheet(sheet, _context, report) {
    const again = sheet.repeatedMarks.filter((bars) => bars.length > 1 && differsWithin(bars));
    const count = again.reduce((sum, bars) => sum + bars.length - 1, 0);
    const [bar] = again[0] ?? [];
    if (
      bar !== undefined &&
      count >= MARKS_OF_MEMBERS.value.rows &&
      count > MARKS_OF_MEMBERS.value.share * sheet.bars.length
    ) {
      const values = { count, all: sheet.bars.length, mark: bar.row.mark ?? "" };
      report({ messageId: "ofMembers", severity: "note", row: bar, at: "mark", values });
      return;
    }
    for (const bars of sheet.repeatedMarks) {
      const first = bars[0];
      if (bars.length < 2 || first === undefined) continue;
      for (const bar of bars.slice(1)) {
        if (bar.row.revision !== first.row.revision || bar.row.struckThrough || first.row.struckThrough)
          continue;
        const difference = firstDifference(first.row, bar.row);
        if (difference === null) continue;
        const said = (of: BarFacts, { row }: BarFacts) => ({
          mark: of.row.mark ?? "",
          first: lineWords(sheet.sheet, row.row),
          difference,
        });
        report({
          messageId: "differs",
          row: bar,
          at: "mark",
          values: said(bar, first),
          // the first ticket is taken for the only one
          also: { row: first, values: said(first, bar) },
        });
      }
    }
  },
});

/** One mark, bars that differ. */
function differsWithin([first, ...others]: readonly BarFacts[]): boolean {
  return first !== undefined && others.some(({ row }) => firstDifference(first.row, row) !== null);
}
