import { defineRule } from "../rule";
import { typedText } from "../typed-text";

export default defineRule({
  code: "SIZE105",
  name: "another-standard",
  severity: "off-standard",
  ofConvention: true,
  docs: {
    summary: "Most sizes and grades of the sheet are of another standard than the one in force.",
    why: "Bars, formers, hooks and masses all come from the standard; with the wrong one the check is of no use.",
    failing: [
      {
        rows: [
          { size: "#5", length: 1000 },
          { size: "#6", length: 1200 },
          { size: "#4", length: 1400 },
        ],
      },
    ],
    passing: [
      {
        standard: "ACI318:2019",
        rows: [
          { size: "#5", length: 40 },
          { size: "#6", length: 50 },
          { size: "#4", length: 60 },
        ],
      },
    ],
  },
  messages: {
    meant:
      "{misfits} of {rows} bars, such as {size}, are none of {standard}, while {fitting} are of {meant}: choose {meant} as the standard and check again; what else hangs on the size was not judged",
  },
  checkSheet(sheet, context, report) {
    const meant = sheet.habits.standardMeant;
    if (meant === null) return;
    const { first, misfits, fitting } = meant;
    const facts = sheet.barAt(first.row);
    if (facts === undefined) return;
    const grade = first.grade === null ? "" : ` ${first.grade}`;
    report({
      messageId: "meant",
      outcome: "unsure",
      row: facts,
      at: "size",
      values: {
        misfits,
        fitting,
        rows: sheet.answers.length,
        size: `${typedText(first.sizeTyped)}${grade}`,
        standard: context.standard.id,
        meant: meant.id,
      },
    });
  },
});
