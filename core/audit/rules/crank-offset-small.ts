import { crankOf, mayBeCrank } from "../crank";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE111",
  name: "crank-offset-small",
  severity: "doubtful",
  docs: {
    summary: "The offset of a crank is less than the bar's own diameter.",
    why: "A crank that does not clear the bar it passes cannot be lapped beside it.",
    failing: [{ rows: [{ size: "H20", shape: "26", A: 1000, B: 300, C: 1000, D: 30, length: 2300 }] }],
    passing: [{ rows: [{ size: "H20", shape: "26", A: 1000, B: 300, C: 1000, D: 45, length: 2300 }] }],
  },
  messages: {
    small: "crank offset {letter} {overall} leaves {offset} between centre lines, below the bar's {diameter}",
  },
  ofKind: mayBeCrank,
  checkRow(facts, _context, report) {
    const crank = crankOf(facts);
    const { diameter } = facts;
    if (crank === null || diameter === null) return;
    const offset = crank.overall - diameter;
    if (offset >= diameter) return;
    report({
      messageId: "small",
      at: crank.letter,
      values: {
        letter: crank.letter === "shape" ? "of the path" : crank.letter,
        overall: { mm: crank.overall },
        offset: { mm: offset },
        diameter: { mm: diameter },
      },
      cite: { document: "geometry of the crank", provenance: "geometry" },
    });
  },
});
