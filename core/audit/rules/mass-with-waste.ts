import { defineRule } from "../rule";

export default defineRule({
  code: "MASS102",
  name: "mass-with-waste",
  severity: "note",
  docs: {
    summary: "Nearly all masses of the sheet are the computed ones times one factor.",
    why: "Waste or another unit mass is worked into every row; added again in the order it counts twice.",
    failing: [{ rows: wasteRows(1.03) }],
    passing: [{ rows: wasteRows(1) }],
  },
  messages: {
    factor: "the masses are {factor} times count x length x unit mass throughout: is waste worked in?",
  },
  checkSheet(sheet, _context, report) {
    const { massFactor } = sheet.habits;
    if (massFactor !== null) report({ messageId: "factor", values: { factor: massFactor } });
  },
});

function wasteRows(factor: number) {
  return [1000, 2000, 3000, 4000, 5000, 6000].map((length) => ({
    size: "H16",
    shape: "00",
    A: length,
    length,
    mass: Math.round(2 * length * 1.579 * factor) / 1000,
  }));
}
