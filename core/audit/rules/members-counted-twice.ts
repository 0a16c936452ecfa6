import { isCountedTwice } from "../row-counts";
import { defineRule } from "../rule";

export default defineRule({
  code: "SUM102",
  name: "members-counted-twice",
  severity: "off-standard",
  docs: {
    summary: "The total is multiplied by the number of members twice.",
    why: "Bars in each was filled in for all members already: the yard cuts several times the steel.",
    failing: [
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 192 }] },
    ],
    passing: [
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 48 }] },
    ],
  },
  messages: {
    twice: "total {total} is {members} x {members} x {each}: the members are multiplied twice",
  },
  fixes: { once: { label: "change the total to {product}", safety: "needs-review" } },
  checkRow(facts, _context, report) {
    const { members, each, total } = facts.row;
    if (members === null || each === null || total === null || !isCountedTwice(facts.row)) return;
    const product = members * each;
    report({
      messageId: "twice",
      at: "total",
      values: { total, members, each, product },
      fix: { id: "once", edits: [{ at: "total", to: product }] },
    });
  },
});
