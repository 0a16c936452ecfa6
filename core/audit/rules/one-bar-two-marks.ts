import type { BarFacts } from "../../bar/bar-facts";
import { saying } from "../../bar/said-words";
import { firstDifference } from "../../bar/same-bar";
import type { SheetFacts } from "../../bar/sheet-facts";
import type { BarRow } from "../../schedule/bar-row";
import { hashOf } from "../../units/hash";
import { HANDED_PAIRS, ONE_MARK_A_BAR } from "../practice.data";
import { defineRule } from "../rule";

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
    alike: "{marks} the same bar as another of their member, such as {first} and {second}",
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
      values: {
        marks: pairs.length === 1 ? "1 mark names" : `${pairs.length} marks name`,
        first: first.row.mark ?? "",
        second: second.row.mark ?? "",
      },
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
function alike({ answers }: SheetFacts): readonly (readonly [BarFacts, BarFacts])[] {
  const pairs: { readonly place: number; readonly pair: readonly [BarFacts, BarFacts] }[] = [];
  for (const [start = 0, ...others] of answers.alike(barInWords, barInNumbers)) {
    const first = answers.bar(start);
    for (const place of others) {
      const facts = answers.bar(place);
      if (first.markKey !== facts.markKey && firstDifference(first.row, facts.row) === null)
        pairs.push({ place, pair: [first, facts] });
    }
  }
  return pairs.sort((one, other) => one.place - other.place).map(({ pair }) => pair);
}

function isTold(row: BarRow): boolean {
  if (row.member === null || row.mark === null || row.shape === null || row.struckThrough) return false;
  return row.length !== null || row.dims.length > 0;
}

/** The same for bars that are the same in words, and for few others. */
function barInNumbers({ row }: BarFacts): number {
  if (!isTold(row)) return 0;
  let hash = hashOf(row.length, hashOf(row.shape, hashOf(row.member)));
  for (const dim of row.dims) hash = hashOf(dim, hash);
  return hash || 1;
}

/** Null of a row that does not say enough to be told from another. */
function barInWords({ row }: BarFacts): string | null {
  if (!isTold(row)) return null;
  const { member, pour, remark, sizeTyped, shape, dims, length, former, coating } = row;
  return JSON.stringify([member, pour, remark, sizeTyped, shape, dims, length, former, coating]);
}
