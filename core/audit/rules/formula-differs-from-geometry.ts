import { leastSure } from "../../standards/citation";
import { courseOf } from "../course-of";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE105",
  name: "formula-differs-from-geometry",
  severity: "note",
  docs: {
    summary: "The printed formula's length and the exact centre line differ by more than 25 mm.",
    why: "The scheduled length is the printed one; the bar as bent takes up the difference in its free leg. Where the printed length is the shorter, that leg may come out below its tolerance.",
    failing: [{ rows: [{ size: "H16", shape: "22", A: 500, B: 500, C: 400, D: 300, length: 1625 }] }],
    passing: [{ rows: [{ size: "H16", shape: "21", A: 500, B: 500, C: 500, length: 1450 }] }],
  },
  messages: {
    short:
      "the printed formula gives {printed}, {missing} short of the centre line {exact}: the free leg comes out shorter",
    differs: "the printed formula gives {printed}, the centre line {exact}: {difference} in the free leg",
  },
  ofKind: ({ definition }) => definition !== null && definition.formula !== null,
  checkRow(facts, _context, report) {
    if (!facts.isBesideFormula) return;
    const { cut, exactLength, definition } = facts;
    if (cut === null || exactLength === null || definition === null || definition.formula === null) return;
    const difference = cut.unrounded - exactLength;
    const isShort = difference < 0;
    // a coil of many turns takes up a hand's breadth unseen
    const isSlight = !isShort || facts.pathKind === "helix";
    report({
      messageId: isShort ? "short" : "differs",
      ...(isSlight ? {} : { severity: "doubtful" as const }),
      at: "shape",
      values: {
        printed: { mm: cut.unrounded },
        exact: { mm: exactLength },
        difference: { mm: difference },
        missing: { mm: -difference },
      },
      cite: leastSure(cut.cite, ...courseOf(facts)),
    });
  },
});
