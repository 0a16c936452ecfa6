import type { BarFacts } from "../../bar/bar-facts";
import { linkSides } from "../../bar/link-sides";
import { memberSize } from "../member-size";
import { DEDUCTION_BETWEEN_FACES } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MEMBER105",
  name: "no-deduction-for-deviations",
  severity: "note",
  docs: {
    summary: "Links fill their section less the cover exactly, with nothing taken off for deviations.",
    why: "Formwork and bending both deviate: a link that fits to the millimetre on paper ends up in the cover. Many schedules take 10 to 20 mm off a bar between two faces. Said once for a sheet.",
    failing: [
      {
        rows: [
          { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 520, B: 220, C: 130, length: 1650 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 510, B: 210, C: 130, length: 1600 },
        ],
      },
    ],
  },
  messages: {
    full: "{rows} of the links, such as mark {mark}, fill the section less {cover} cover exactly: usual is to take {small} to {large} off for deviations",
  },
  checkSheet(sheet, _context, report) {
    const full = sheet.answers.those(fillsItsSection);
    const first = full[0]?.facts;
    if (first === undefined) return;
    report({
      messageId: "full",
      outcome: "unsure",
      values: {
        rows: full.length,
        mark: first.row.mark ?? String(first.row.row + 1),
        cover: { mm: first.inWords(memberSize)?.cover ?? 0 },
        small: { mm: DEDUCTION_BETWEEN_FACES.value.small },
        large: { mm: DEDUCTION_BETWEEN_FACES.value.large },
      },
      cite: DEDUCTION_BETWEEN_FACES.cite,
    });
  },
});

function fillsItsSection(facts: BarFacts): true | null {
  const member = facts.inWords(memberSize);
  const sides = member === null || member.cover === null ? null : linkSides(facts);
  if (sides === null || member === null || member.cover === null) return null;
  const { wide, narrow, cover } = member;
  return sides.long === wide - 2 * cover && sides.short === narrow - 2 * cover ? true : null;
}
