import { isRefusal } from "../../units/refusal";
import { COUPLER_STRAIGHT, WELD_DISTANCE } from "../practice.data";
import { defineRule } from "../rule";

/** bar diameters between a weld and a bend below which a much larger former is asked for */
const FROM_WELD = 3;
/** bar diameters of straight that most couplers take: which it is, their maker says */
const FOR_COUPLER = 10;

export default defineRule({
  code: "BEND107",
  name: "bend-near-joint",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary:
      "A bar noted as welded has a bend within three diameters of an end, or one noted as coupled within ten.",
    why: "Steel near a weld needs a much larger former, and a coupler a straight end, as long as its maker says. Ask the designer.",
    failing: [
      { rows: [{ size: "H20", shape: "11", A: 1500, B: 140, length: 1600, remark: "welded to plate" }] },
      { rows: [{ size: "H20", shape: "11", A: 1500, B: 200, length: 1650, remark: "coupler at B" }] },
    ],
    passing: [
      { rows: [{ size: "H20", shape: "11", A: 1500, B: 200, length: 1650, remark: "welded to plate" }] },
    ],
  },
  messages: {
    near: "an end straight of {straight} is below {least} ({diameters} diameters) on a bar noted as {joint}: ask the designer",
    said: "{straight} between bend and joint is below {least} ({diameters} diameters) on a bar noted as {joint}: ask the designer",
  },
  ofWords: jointSaid,
  checkRow(facts, _context, report) {
    const joint = facts.row.remark === null ? null : facts.inWords(jointSaid);
    if (joint === null) return;
    const { developed, diameter, planarPath } = facts;
    if (diameter === null || planarPath === null || planarPath.turns.length === 0) return;
    if (developed === null || isRefusal(developed)) return;
    const said = facts.inWords(distanceSaid);
    const ends = Math.min(developed.straights[0] ?? Infinity, developed.straights.at(-1) ?? Infinity);
    const straight = said ?? ends;
    const diameters = joint.startsWith("weld") ? FROM_WELD : FOR_COUPLER;
    const least = diameters * diameter;
    if (straight >= least) return;
    report({
      messageId: said === null ? "near" : "said",
      outcome: "unsure",
      at: "remark",
      values: { straight: { mm: straight }, least: { mm: least }, diameters, joint },
      cite: joint.startsWith("weld") ? WELD_DISTANCE : COUPLER_STRAIGHT,
    });
  },
});

/** mm: "weld to plate 40 from bend" */
function distanceSaid(words: string): number | null {
  const said = /\b(?:weld|coupl)[^.;,]*?\b(\d{1,4})\s*(?:mm\s*)?(?:from|off) (?:the |a )?bend\b/.exec(
    words,
  )?.[1];
  return said === undefined ? null : Number(said);
}

function jointSaid(words: string): string | null {
  return /\bweld\w*|\bcoupl\w*/.exec(words)?.[0] ?? null;
}
