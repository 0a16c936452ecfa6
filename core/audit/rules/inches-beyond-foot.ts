import type { BarFacts } from "../../bar/bar-facts";
import { INCHES_PER_FOOT } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN114",
  name: "inches-beyond-foot",
  severity: "doubtful",
  docs: {
    summary: "Beside the feet of a length stand twelve inches or more.",
    why: "A digit too many or one typed twice makes 16 inches of 6, and the bar ten inches too long. It takes a list with a column for feet and one for inches: no small table can show it.",
    failing: [],
    passing: [
      { standard: "ACI318:2019", rows: [{ size: "#5", shape: "12in +90 40in", length: `4'-2 1/2"` }] },
    ],
  },
  messages: {
    beyond: "{inches} in beside {feet} ft are more than a foot: is a digit too many?",
  },
  checkRow(facts, _context, report) {
    const found = feetAndInches(facts);
    if (found === null || !(found.inches >= INCHES_PER_FOOT.value) || !(found.feet > 0)) return;
    report({ messageId: "beyond", outcome: "unsure", at: "length", values: found });
  },
});

/** Of a length in two columns; where it stands in one cell the reader refuses such inches. */
function feetAndInches(facts: BarFacts): { readonly feet: number; readonly inches: number } | null {
  const inches = facts.row.table.columns.get("length")?.inches;
  if (inches === undefined || facts.row.length === null) return null;
  const cell = facts.sheet.sheet.cell(facts.row.row, inches);
  return { feet: Number.parseFloat(String(facts.typed("length"))), inches: Number.parseFloat(String(cell)) };
}
