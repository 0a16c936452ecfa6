import type { BarFacts } from "../../bar/bar-facts";
import { saying } from "../../bar/said-words";
import type { SheetFacts } from "../../bar/sheet-facts";
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
    for (const { facts } of sheet.answers.those(lacksHand)) {
      report({
        messageId: "hand",
        severity: "doubtful",
        outcome: "unsure",
        row: facts,
        at: "remark",
        cite: HANDED_PAIRS,
      });
    }
    const pairs = alike(sheet);
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

function lacksHand(facts: BarFacts): true | null {
  return facts.inWords(saysPair) && !facts.inWords(saysWhich) && isSpaceBar(facts) ? true : null;
}

function isSpaceBar({ shape }: BarFacts): boolean {
  return shape?.path?.kind === "planar" && !shape.path.inOnePlane;
}

/** Bars of one member with another's size, shape, dimensions, length and place, and a mark of their own. */
function alike({ bars, answers }: SheetFacts): readonly (readonly [BarFacts, BarFacts])[] {
  const firsts = new Map<string, BarFacts>();
  const pairs: (readonly [BarFacts, BarFacts])[] = [];
  const keys = answers.each(barInWords);
  for (let place = 0; place < bars.length; place += 1) {
    const key = keys[place] as string | null;
    if (key === null) continue;
    const facts = bars[place] as BarFacts;
    const first = firsts.get(key);
    if (first === undefined) firsts.set(key, facts);
    else if (first.markKey !== facts.markKey && firstDifference(first.row, facts.row) === null)
      pairs.push([first, facts]);
  }
  return pairs;
}

/** Null of a row that does not say enough to be told from another. */
function barInWords({ row }: BarFacts): string | null {
  if (row.member === null || row.mark === null || row.shape === null || row.struckThrough) return null;
  if (row.length === null && row.dims.length === 0) return null;
  const { member, pour, remark, sizeTyped, shape, dims, length } = row;
  return JSON.stringify([member, pour, remark, sizeTyped, shape, dims, length]);
}
