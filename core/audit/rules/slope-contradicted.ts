import type { BarFacts } from "../../bar/bar-facts";
import { leastSure } from "../../standards/citation";
import type { ShapeDefinition } from "../../standards/port";
import { courseOf } from "../course-of";
import { defineRule } from "../rule";

/** a leg, one bend, and a free leg that slopes, of which a height and a reach are given too */
const SLOPE = "A +t (C)";
/** in diameters: what an outside and a centre line, and a bend's own roundness, can make of two projections */
const SLACK_DIAMETERS = 3;
/** mm: to which lists round each of them */
const ROUNDED = 25;

export default defineRule({
  code: "SHAPE122",
  name: "slope-contradicted",
  severity: "doubtful",
  docs: {
    summary: "The height and the reach of a sloping leg make another leg than the one given.",
    why: "The three are sides of one triangle, so at least one of them is wrong, and the angle hangs on which.",
    failing: [{ rows: [{ size: "H20", shape: "15", A: 700, B: 600, C: 1250, D: 560, length: 1950 }] }],
    passing: [{ rows: [{ size: "H20", shape: "15", A: 1150, B: 600, C: 820, D: 560, length: 1975 }] }],
  },
  messages: {
    contradicted:
      "leg C of {leg} cannot rise B {height} over D {reach}, which make a leg of {made}: ask the designer which of the three is meant",
  },
  ofKind: ({ definition }) => definition !== null && isSlope(definition),
  checkRow(facts, _context, report) {
    const { definition } = facts;
    if (definition === null || !isSlope(definition)) return;
    const found = contradiction(facts);
    if (found === null) return;
    const { leg, height, reach } = found;
    report({
      messageId: "contradicted",
      outcome: "unsure",
      at: "C",
      values: {
        leg: { mm: leg },
        height: { mm: height },
        reach: { mm: reach },
        made: { mm: Math.round(Math.hypot(height, reach)) },
      },
      cite: leastSure(definition.cite, ...courseOf(facts)),
    });
  },
});

function isSlope({ path, optionalDims = [] }: ShapeDefinition): boolean {
  return path === SLOPE && optionalDims.includes("D");
}

/** The three sides, where no way of measuring them makes a triangle: either leg may slope, and the reach may hold the other. */
function contradiction(facts: BarFacts): { leg: number; height: number; reach: number } | null {
  const [other, height, leg, reach] = (["A", "B", "C", "D"] as const).map((letter) => facts.dim(letter));
  if (other == null || height == null || leg == null || reach == null) return null;
  const slack = SLACK_DIAMETERS * (facts.diameter ?? 0) + ROUNDED;
  const fits = (sloping: number, over: number): boolean =>
    over >= 0 && Math.abs(Math.hypot(height, over) - sloping) <= slack;
  const isMade =
    fits(leg, reach) || fits(other, reach) || fits(leg, reach - other) || fits(other, reach - leg);
  return isMade ? null : { leg, height, reach };
}
