import type { BarFacts } from "../../bar/bar-facts";
import { massPerMetreOf } from "../../schedule/cells/size-elsewhere";
import { defineRule } from "../rule";

/** rows of a list from which it can be told */
const FEWEST = 5;

export default defineRule({
  code: "READ107",
  name: "reading-failed",
  severity: "off-standard",
  docs: {
    summary: "Most rows of the sheet end in no total: the sheet was not read as it is meant.",
    why: "Next to no tonnes of a whole list is no result. A column of sizes, numbers or lengths was not found, or stands in another unit.",
    failing: [
      {
        rows: [1, 2, 3, 4, 5, 6].map((index) => ({
          ...{ mark: String(index), size: "H17", shape: "00", A: 1000, length: 1000, mass: null },
        })),
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: {
    failed:
      "{missing} of {bars} rows stand in no total, most for want of {what}: the sheet was not read as it is meant",
  },
  checkSheet(sheet, _context, report) {
    const { bars } = sheet;
    if (bars.length < FEWEST) return;
    const wants = new Map<string, number>();
    let missing = 0;
    for (const { answer: what } of sheet.answers.those(lacks)) {
      missing += 1;
      wants.set(what, (wants.get(what) ?? 0) + 1);
    }
    if (missing * 2 <= bars.length) return;
    const [most] = [...wants].sort(([, one], [, other]) => other - one);
    const values = { missing, bars: bars.length, what: most?.[0] ?? "" };
    report({ messageId: "failed", values });
  },
});

/** What keeps a row out of every total; null where it is in one. */
function lacks(facts: BarFacts): string | null {
  const { row } = facts;
  if (row.mass !== null) return null;
  if (massPerMetreOf(row.size) === null) return "a bar size of the standard";
  if (facts.count === null) return "a number of bars";
  return facts.lengthInForce === null ? "a length" : null;
}
