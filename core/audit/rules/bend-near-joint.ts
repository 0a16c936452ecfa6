import { isRefusal } from "../../units/refusal";
import { WELD_DISTANCE } from "../practice.data";
import { defineRule } from "../rule";

const DIAMETERS = 10;

export default defineRule({
  code: "BEND107",
  name: "bend-near-joint",
  severity: "unsafe",
  needs: "remark",
  docs: {
    summary: "A bar noted as welded or coupled has a bend within ten diameters of an end.",
    why: "Steel near a weld cracks when it is bent, and a coupler needs a straight end. Ask the designer.",
    failing: [
      { rows: [{ size: "H20", shape: "11", A: 1500, B: 200, length: 1650, remark: "welded to plate" }] },
    ],
    passing: [
      { rows: [{ size: "H20", shape: "11", A: 1500, B: 500, length: 1950, remark: "welded to plate" }] },
    ],
  },
  messages: {
    near: "an end straight of {straight} is below {least} (10 diameters) on a bar noted as {joint}: ask the designer",
  },
  checkRow(facts, _context, report) {
    const joint = facts.row.remark === null ? null : facts.inWords(jointSaid);
    if (joint === null) return;
    const { developed, diameter, planarPath } = facts;
    if (diameter === null || planarPath === null || planarPath.turns.length === 0) return;
    if (developed === null || isRefusal(developed)) return;
    const straight = Math.min(developed.straights[0] ?? Infinity, developed.straights.at(-1) ?? Infinity);
    const least = DIAMETERS * diameter;
    if (straight >= least) return;
    report({
      messageId: "near",
      outcome: "unsure",
      at: "remark",
      values: { straight: { mm: straight }, least: { mm: least }, joint },
      cite: WELD_DISTANCE,
    });
  },
});

function jointSaid(words: string): string | null {
  return /\bweld\w*|\bcoupl\w*/.exec(words)?.[0] ?? null;
}
