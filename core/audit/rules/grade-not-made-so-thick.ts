import { defineRule } from "../rule";

export default defineRule({
  code: "GRADE105",
  name: "grade-not-made-so-thick",
  severity: "doubtful",
  docs: {
    summary: "A bar is thicker than its grade is made.",
    why: "Class A is cold-reduced steel of small sizes: nobody can deliver a thick bar of it, and the class that comes instead is another steel. Ask the designer which class is meant.",
    failing: [{ rows: [{ size: "A16", shape: "00", A: 3000, length: 3000 }] }],
    passing: [
      { rows: [{ size: "A12", shape: "00", A: 3000, length: 3000 }] },
      { rows: [{ size: "B16", shape: "00", A: 3000, length: 3000 }] },
    ],
  },
  messages: { thick: "{size}: {grade} is made up to {most}; ask the designer which steel is meant" },
  ofKind: ({ grade, diameter }) => (diameter ?? 0) > (grade?.madeUpTo?.value ?? Infinity),
  checkRow(facts, _context, report) {
    const { grade, diameter } = facts;
    const most = grade?.madeUpTo;
    if (grade === null || most === undefined || diameter === null || diameter <= most.value) return;
    report({
      messageId: "thick",
      at: facts.row.grade === null ? "size" : "grade",
      values: { size: facts.sizeName, grade: grade.name, most: { mm: most.value } },
      cite: most.cite,
    });
  },
});
