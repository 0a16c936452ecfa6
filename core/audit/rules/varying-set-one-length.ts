import type { VaryingSet } from "../../schedule/bar-row";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN103",
  name: "varying-set-one-length",
  severity: "doubtful",
  needs: "varying",
  docs: {
    summary: "A dimension varies over the set, but one length is given for all bars.",
    why: "One length is the mean at best: half of the bars come out too short.",
    failing: [
      {
        rows: [
          { size: "H12", shape: "00", A: "1200-1800 step 50", length: 1500, members: 1, each: 13, total: 13 },
        ],
      },
    ],
    passing: [
      { rows: [{ size: "H12", shape: "00", A: "1200-1800 step 50", members: 1, each: 13, total: 13 }] },
    ],
  },
  messages: {
    mean: "{letter} varies, but one length of {length} is given for the set: give each bar its length",
  },
  checkRow(facts, _context, report) {
    const { varying, length } = facts.row;
    if (!varying || length === null || varying.field === "length") return;
    if (isSumOfTwoLegs(varying, length)) return;
    report({ messageId: "mean", at: "length", values: { letter: varying.field, length: { mm: length } } });
  },
});

/** "300-2200" beside 2500: two legs joined in one cell, less a bend at most, and no set. */
function isSumOfTwoLegs({ from, to, step }: VaryingSet, length: number): boolean {
  if (from === null || to === null || step !== null) return false;
  const less = from + to - length;
  return less >= -1 && less <= Math.min(from, to) / 2;
}
