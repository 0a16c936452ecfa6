import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE108",
  name: "no-free-dimension",
  severity: "doubtful",
  docs: {
    summary:
      "A sketched shape has all its dimensions given and none in brackets, while the sheet uses brackets.",
    why: "Without a free leg every tolerance adds up where nobody wants it.",
    failing: [
      {
        rows: [
          { size: "H16", shape: "21", A: 500, B: 400, C: "(500)", length: 1350 },
          { size: "H16", shape: "99", A: 500, B: 400, C: 300, length: 1200 },
        ],
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: "(300)", length: 1200 }] }],
  },
  messages: { none: "shape {code} has no dimension in brackets: say which one takes up the tolerance" },
  ofKind: ({ definition }) => definition !== null && definition.path === null && definition.formula === null,
  checkRow(facts, _context, report) {
    const { definition, row } = facts;
    if (definition === null || definition.path !== null || definition.formula !== null) return;
    if (row.freeDims !== "" || !facts.sheet.habits.usesBrackets) return;
    if (DIMENSION_LETTERS.filter((letter) => facts.dim(letter) !== null).length < 2) return;
    report({ messageId: "none", at: "shape", values: { code: definition.code }, cite: definition.cite });
  },
});
