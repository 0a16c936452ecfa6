import type { BarFacts } from "../../bar/bar-facts";
import type { Cited } from "../../standards/citation";
import type { DetailingFigures, Standard } from "../../standards/port";
import { MM_PER_UNIT } from "../../units/unit-table";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE120",
  name: "spiral-pitch-unusual",
  severity: "doubtful",
  docs: {
    summary: "The turns of a spiral are closer together or further apart than the design code allows.",
    why: "Too close, the concrete does not pass between the turns; too far apart, they do not hold the core. What a code asks of columns need not hold for piles and tanks, and the pitch is the designer's: ask the designer.",
    failing: [
      {
        standard: "BS8666:2005+ACI318:2019",
        rows: [{ size: "#3", shape: "77", A: 500, B: 150, C: 43, length: 66800 }],
      },
    ],
    passing: [
      {
        standard: "BS8666:2005+ACI318:2019",
        rows: [{ size: "#3", shape: "77", A: 500, B: 75, C: 43, length: 66275 }],
      },
      { rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 43, length: 66800 }] },
    ],
  },
  messages: {
    close: "turns at {pitch} leave {gap}, below {limit}: ask the designer",
    wide: "turns at {pitch} leave {gap}, over {limit}: ask the designer",
  },
  checkRow(facts, { standard }, report) {
    const pitch = pitchOf(facts);
    const { diameter } = facts;
    if (pitch === null || diameter === null) return;
    const [rule, gap] = ruleOf(standard, diameter, pitch);
    if (rule === null) return;
    const { atLeast = 0, atMost = Infinity } = rule.value;
    const limit = gap < atLeast - 0.5 ? atLeast : gap > atMost + 0.5 ? atMost : null;
    if (limit === null) return;
    report({
      ...(isOfPileOrTank(facts) ? { severity: "note" as const } : {}),
      messageId: limit === atLeast ? "close" : "wide",
      at: facts.pathKind === "helix" ? "B" : "remark",
      values: { pitch: { mm: pitch }, gap: { mm: gap }, limit: { mm: limit } },
      cite: rule.cite,
    });
  },
});

/** The rule in force and what it measures: the clear gap or the pitch itself. */
function ruleOf(
  standard: Standard,
  diameter: number,
  pitch: number,
): readonly [Cited<DetailingFigures> | null, number] {
  const clear = standard.detailing("spiral, clear between turns", diameter);
  return clear === null ? [standard.detailing("spiral, pitch", diameter), pitch] : [clear, pitch - diameter];
}

const PILE_OR_TANK = /\b(?:piles?|shafts?|caissons?|drilled piers?|tanks?|silos?)\b/i;

/** The limits are of columns' spirals; those of piles and tanks follow rules that are not held. */
function isOfPileOrTank(facts: BarFacts): boolean {
  return [facts.row.member, facts.row.remark].some((words) => words != null && PILE_OR_TANK.test(words));
}

/** mm, of the shape or of the words "spiral ... pitch 100". */
function pitchOf(facts: BarFacts): number | null {
  const { pathKind } = facts;
  if (pathKind === "helix") {
    const { path } = facts;
    return path?.kind === "helix" && path.pitch > 0 ? path.pitch : null;
  }
  return pathKind === null || facts.isStraight ? facts.inWords(pitchSaid) : null;
}

function pitchSaid(words: string): number | null {
  if (!/\b(?:spirals?|heli(?:x|cal|ces))\b/.test(words)) return null;
  const said = /\bpitch\s*(?:=|:|of|@)?\s*(\d+(?:\.\d+)?)\s*(mm|"|″|in\b)?/.exec(words);
  if (said === null) return null;
  return Number(said[1]) * (said[2] === undefined || said[2] === "mm" ? 1 : MM_PER_UNIT.in);
}
