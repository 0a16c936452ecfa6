import type { BarFacts } from "../../bar/bar-facts";
import { defineRule } from "../rule";

export default defineRule({
  code: "LIFT102",
  name: "bundle-over-hoist",
  severity: "note",
  docs: {
    summary: "The bars of a row weigh more together than the hoist or crane may lift at once.",
    why: "What is tied is lifted: the bars of such a row are tied in several bundles. Said once for a sheet, and only where a limit is set.",
    failing: [
      { rows: [{ size: "H32", shape: "00", A: 6000, length: 6000, total: 40 }], limits: { hoist: 1000 } },
    ],
    passing: [
      { rows: [{ size: "H32", shape: "00", A: 6000, length: 6000, total: 40 }] },
      { rows: [{ size: "H32", shape: "00", A: 6000, length: 6000, total: 20 }], limits: { hoist: 1000 } },
    ],
  },
  messages: {
    heavy:
      "{rows} rows weigh more than the {limit} of the hoist, such as mark {mark} with {mass}: tie them in several bundles",
  },
  checkSheet(sheet, { limits: { hoist } }, report) {
    if (hoist === null) return;
    const heavy = sheet.answers.those(isTooHeavy, hoist.value);
    const first = heavy[0]?.facts;
    if (first === undefined) return;
    report({
      messageId: "heavy",
      values: {
        rows: heavy.length,
        limit: { kg: hoist.value },
        mark: first.row.mark ?? String(first.row.row + 1),
        mass: { kg: (first.massEach ?? 0) * (first.count ?? 0) },
      },
      cite: hoist.cite,
    });
  },
});

function isTooHeavy({ massEach, count, row }: BarFacts, hoist: number): true | null {
  if (massEach === null || count === null || row.struckThrough) return null;
  // one bar too heavy is another rule's
  return massEach <= hoist && massEach * count > hoist ? true : null;
}
