import { leastSure } from "../../standards/citation";
import { courseOf } from "../course-of";
import { hasLengthsElsewhere, isLengthOwnWay } from "../kept-elsewhere";
import { defineRule } from "../rule";
import { siteDeductionLength } from "../site-deduction-length";

/** mm */
const CLOSE = 1;

export default defineRule({
  code: "LEN106",
  name: "length-by-site-deduction",
  severity: "doubtful",
  needs: "other length",
  docs: {
    summary:
      "The length is the sum of the legs less one, two or three diameters a bend, which is too much here.",
    why: "The deductions are a habit of sites and not geometry: with sloping bends they make the bar too short.",
    failing: [{ rows: [{ size: "H16", shape: "26", A: 1000, B: 500, C: 1000, D: 365, length: 2475 }] }],
    passing: [{ rows: [{ size: "H16", shape: "26", A: 1000, B: 500, C: 1000, D: 365, length: 2500 }] }],
  },
  messages: {
    short: "length {length} is by site deductions; the centre line needs {exact}: {missing} short",
  },
  fixes: { computed: { label: "change the length to {computed}", safety: "needs-review" } },
  checkRow(facts, context, report) {
    const judged = facts.lengthJudgement;
    if (hasLengthsElsewhere(facts.sheet.habits, context)) return;
    const { exactLength } = facts;
    const { length } = facts.row;
    if (judged.kind !== "differs" || exactLength === null || length === null) return;
    if (siteDeductionLength(facts) === null) return;
    const { cut } = judged;
    const isOwnWay = isLengthOwnWay(facts, context);
    report({
      messageId: "short",
      ...(isOwnWay ? { severity: "note" as const, outcome: "unsure" as const } : {}),
      at: "length",
      values: {
        length: { mm: length, typed: true },
        exact: { mm: exactLength },
        missing: { mm: exactLength - length },
        computed: { mm: cut.length },
      },
      cite: leastSure(cut.cite, ...courseOf(facts)),
      // a printed length below the centre line mends nothing
      ...(isOwnWay || cut.length < exactLength - CLOSE
        ? {}
        : { fix: { id: "computed", edits: [{ at: "length", to: cut.length }] } }),
    });
  },
});
