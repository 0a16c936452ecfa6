import type { BarFacts } from "../../bar/bar-facts";
import { isCountedTwice } from "../row-counts";
import { defineRule } from "../rule";
import { isTogether } from "../several-products";

export default defineRule({
  code: "SUM101",
  name: "total-differs",
  severity: "off-standard",
  docs: {
    summary: "The total is not members times bars in each.",
    why: "The total is what the yard cuts. A wrong one is found when the last member has no bars.",
    failing: [
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 46 }] },
    ],
    passing: [
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 48 }] },
    ],
  },
  messages: {
    differs: "total {total} is not {members} x {each} = {product}, members times bars in each",
  },
  fixes: { product: { label: "change the total to {product}", safety: "needs-review" } },
  checkRow(facts, _context, report) {
    const { members, each, total } = facts.row;
    if (members === null || each === null || total === null || total === members * each) return;
    if (isCountedTwice(facts.row) || isTogether(facts)) return;
    const product = members * each;
    report({
      messageId: "differs",
      at: "total",
      values: { total, members, each, product },
      // where mass or total length follow from the total, members or bars in each are what is wrong
      ...(isBorneOut(facts)
        ? {}
        : { fix: { id: "product" as const, edits: [{ at: "total", to: product }] } }),
    });
  },
});

const AGREE = 0.01;

/** The row's mass or total length is that of the total as it is typed. */
function isBorneOut({ row, massEach }: BarFacts): boolean {
  const { length, total, mass, totalLength = null } = row;
  const ofMass = mass === null || massEach === null ? null : mass / massEach;
  const ofLength = totalLength === null || length === null ? null : totalLength / length;
  return [ofMass, ofLength].some((bars) => bars !== null && Math.abs(bars / (total ?? 0) - 1) <= AGREE);
}
