import { saying } from "../../bar/said-words";
import { DUCTILITY_CLASS } from "../practice.data";
import { defineRule } from "../rule";

const saysSeismic = saying(/seismic|earthquake|ductile|\bdc[mh]\b/);

export default defineRule({
  code: "GRADE104",
  name: "ductility-class-low",
  severity: "unsafe",
  docs: {
    summary: "Steel of ductility class A stands in a member noted as seismic or ductile.",
    why: "Class A steel breaks early where a member must yield in an earthquake. Which class is needed the designer says: ask the designer.",
    failing: [{ rows: [{ size: "A12", shape: "00", A: 3000, length: 3000, remark: "seismic zone" }] }],
    passing: [{ rows: [{ size: "C12", shape: "00", A: 3000, length: 3000, remark: "seismic zone" }] }],
  },
  messages: {
    low: "grade {grade} is class A in a member noted as seismic: ask the designer which class it needs",
  },
  ofWords: saysSeismic,
  checkRow(facts, _context, report) {
    const grade = facts.gradeName;
    if (grade === null || !facts.inWords(saysSeismic)) return;
    if (!/^(?:A|B\d{3}A|.*\bclass A)$/i.test(grade.trim()) && !/500A$/.test(facts.grade?.name ?? "")) return;
    report({
      messageId: "low",
      outcome: "unsure",
      at: facts.row.grade === null ? "size" : "grade",
      values: { grade },
      cite: DUCTILITY_CLASS,
    });
  },
});
