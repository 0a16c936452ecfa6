import { defineRule } from "../rule";
import { typedText } from "../typed-text";

export default defineRule({
  code: "SIZE105",
  name: "another-standard",
  severity: "off-standard",
  ofConvention: true,
  docs: {
    summary:
      "Most sizes and grades of the sheet, or its shape codes, are of another standard than the one in force.",
    why: "Bars, formers, hooks and masses all come from the standard, and one number means another shape in each list; with the wrong one the check is of no use.",
    failing: [
      {
        rows: [
          { size: "T16", shape: "37", A: 500, B: 400, length: 875 },
          { size: "T12", shape: "20", A: 1200, length: 1200 },
          { size: "T16", shape: "38", A: 500, B: 400, C: 500, length: 1325 },
        ],
      },
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
        standard: "BS4466:1989",
        rows: [
          { size: "T16", shape: "37", A: 500, B: 400, length: 875 },
          { size: "T12", shape: "20", A: 1200, length: 1200 },
          { size: "T16", shape: "38", A: 500, B: 400, C: 500, length: 1325 },
        ],
      },
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
    codes:
      "{misfits} of {rows} shape codes, such as {shape}, are none of {standard}, while {fitting} are of {meant}, where a number means another shape: choose {meant} if the schedule is of that list, and check again; no shape of the sheet was judged",
  },
  checkSheet(sheet, context, report) {
    const codes = sheet.codesMeant(context.standard);
    const coded = codes === null ? undefined : sheet.barAt(codes.first.row);
    if (codes !== null && codes.id !== null && coded !== undefined) {
      const { misfits, fitting, coded: rows, id } = codes;
      const values = { misfits, fitting, rows, meant: id, standard: context.standard.id };
      const shape = typedText(coded.typed("shape"));
      report({
        messageId: "codes",
        outcome: "unsure",
        row: coded,
        at: "shape",
        values: { ...values, shape },
      });
    }
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
