import type { BarFacts } from "../../bar/bar-facts";
import { saying } from "../../bar/said-words";
import { HANDED_PAIRS, ONE_MARK_A_BAR } from "../practice.data";
import { defineRule } from "../rule";
import { firstDifference } from "../same-bar";

const saysPair = saying(/\bpairs?\b|\bhanded\b|\bmirror/);
const saysWhich = saying(/as drawn|opp(?:osite|\.)? hand|\b(?:left|right|lh|rh|l\/h|r\/h)\b/);

export default defineRule({
  code: "MARK106",
  name: "one-bar-two-marks",
  severity: "note",
  docs: {
    summary:
      "Bars of one member that are alike in everything have two marks, or bars in pairs do not say which hand is which.",
    why: "Two bundles where one would do are tied, labelled and looked for twice; or one of the two marks was meant to differ. A space bar and its mirror image are two bars: made all of one hand, half of them do not fit.",
    failing: [
      {
        rows: [
          { member: "B1", mark: "03", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
          { member: "B1", mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { member: "B1", mark: "03", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
          { member: "B2", mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        ],
      },
    ],
  },
  messages: {
    alike: "{pairs} marks name the same bar as another of their member, such as {first} and {second}",
    hand: "the bars are handed: say how many are as drawn and how many of the opposite hand",
  },
  checkSheet(sheet, _context, report) {
    for (const facts of sheet.bars) {
      if (!isSpaceBar(facts) || !facts.inWords(saysPair) || facts.inWords(saysWhich)) continue;
      report({
        messageId: "hand",
        severity: "doubtful",
        outcome: "unsure",
        row: facts,
        at: "remark",
        cite: HANDED_PAIRS,
      });
    }
    const pairs = alike(sheet.bars);
    const [pair] = pairs;
    if (pair === undefined) return;
    const [first, second] = pair;
    report({
      messageId: "alike",
      outcome: "unsure",
      values: { pairs: pairs.length, first: first.row.mark ?? "", second: second.row.mark ?? "" },
      cite: ONE_MARK_A_BAR,
    });
  },
});

function isSpaceBar({ shape }: BarFacts): boolean {
  return shape?.path?.kind === "planar" && !shape.path.inOnePlane;
}

/** Bars of one member with another's size, shape, dimensions, length and place, and a mark of their own. */
function alike(bars: readonly BarFacts[]): readonly (readonly [BarFacts, BarFacts])[] {
  const firsts = new Map<string, BarFacts>();
  const pairs: (readonly [BarFacts, BarFacts])[] = [];
  for (const facts of bars) {
    const { row } = facts;
    if (row.member === null || row.mark === null || row.shape === null || row.struckThrough) continue;
    if (row.length === null && row.dims.length === 0) continue;
    const key = JSON.stringify([
      row.member,
      row.pour,
      row.remark,
      row.sizeTyped,
      row.shape,
      row.dims,
      row.length,
    ]);
    const first = firsts.get(key);
    if (first === undefined) firsts.set(key, facts);
    else if (first.markKey !== facts.markKey && firstDifference(first.row, row) === null)
      pairs.push([first, facts]);
  }
  return pairs;
}
