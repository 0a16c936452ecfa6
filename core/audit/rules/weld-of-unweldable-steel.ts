import { saying } from "../../bar/said-words";
import { defineRule } from "../rule";

const saysWelded = saying(/\b(?:tack[- ]?)?weld(?:s|ed|ing)?\b/);
const saysNotWelded = saying(/\b(?:no|not|never|without|do not|don't) (?:be |to be )?(?:tack[- ]?)?weld/);

export default defineRule({
  code: "GRADE106",
  name: "weld-of-unweldable-steel",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "A bar is noted as welded, and its grade is not made to be welded.",
    why: "The heat of a weld, of a tack too, hardens such steel, and it breaks beside the weld. Ask the designer for a weldable grade or another joint.",
    failing: [
      {
        standard: "CSA-A23.1:2019",
        rows: [{ size: "20M", grade: "400R", shape: "00", A: 3000, length: 3000, remark: "weld to plate" }],
      },
    ],
    passing: [
      {
        standard: "CSA-A23.1:2019",
        rows: [{ size: "20M", grade: "400W", shape: "00", A: 3000, length: 3000, remark: "weld to plate" }],
      },
    ],
  },
  messages: { weld: "{grade} is noted as welded and is not made for it: ask the designer" },
  ofWords: saysWelded,
  checkRow(facts, { standard }, report) {
    const { remark } = facts.row;
    if (remark === null || !facts.inWords(saysWelded) || facts.inWords(saysNotWelded)) return;
    // a grade that the remark itself names is the bar's
    const grade = standard.grades.find(({ name }) => remark.split(/[\s,;]+/).includes(name)) ?? facts.grade;
    if (grade?.notWelded === undefined) return;
    report({ messageId: "weld", at: "remark", values: { grade: grade.name }, cite: grade.notWelded });
  },
});
