import { memberExtent } from "../member-size";
import { SPIRAL_END_TURNS } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE118",
  name: "helix-end-turns-missing",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "A helix has just the turns that its pitch needs for the length, and none for its ends.",
    why: "The extra turns at the ends anchor it; without them the helix unwinds.",
    failing: [
      {
        rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 40, length: 62125, remark: "pile length 6000" }],
      },
    ],
    passing: [
      {
        rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 43, length: 66800, remark: "pile length 6000" }],
      },
    ],
  },
  messages: {
    missing: "{turns} turns at {pitch} are {needed} for {length} and less than {ends} more at each end",
  },
  ofWords: memberExtent,
  checkRow(facts, _context, report) {
    if (facts.pathKind !== "helix" || facts.row.remark === null) return;
    const { path } = facts;
    if (path?.kind !== "helix") return;
    const length = facts.inWords(memberExtent);
    if (length === null || path.pitch <= 0) return;
    const needed = length / path.pitch;
    const ends = SPIRAL_END_TURNS.value;
    if (path.turns >= needed + 2 * ends - 1e-6) return;
    report({
      messageId: "missing",
      at: "C",
      values: {
        turns: path.turns,
        pitch: { mm: path.pitch },
        needed,
        length: { mm: length },
        ends,
      },
      cite: SPIRAL_END_TURNS.cite,
    });
  },
});
