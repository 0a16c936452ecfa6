import { SHORT } from "../../bar/bar-facts";
import { leastSure } from "../../standards/citation";
import { isRefusal } from "../../units/refusal";
import { courseOf } from "../course-of";
import { defineRule } from "../rule";

export default defineRule({
  code: "BEND104",
  name: "straight-between-bends-short",
  severity: "off-standard",
  docs: {
    summary: "The straight between two bends is shorter than the standard's least.",
    why: "The second bend has little straight bar to be held by. Whether the yard's tooling can hold it is for the rules of the machines.",
    failing: [{ rows: [{ size: "H20", shape: "21", A: 400, B: 250, C: 400, length: 950 }] }],
    passing: [{ rows: [{ size: "H20", shape: "21", A: 400, B: 260, C: 400, length: 950 }] }],
  },
  messages: {
    short: "straight of {straight} between two bends is below {least} ({diameters} bar diameters) for {size}",
  },
  ofKind: ({ isStraight }, { standard }) => !isStraight && standard.straightBetweenBends !== null,
  checkRow(facts, context, report) {
    const limit = context.standard.straightBetweenBends;
    const { diameter } = facts;
    if (limit === null || diameter === null || !facts.hasShortStraight) return;
    const least = limit.value * diameter;
    const { developed, planarPath } = facts;
    if (planarPath === null || developed === null || isRefusal(developed)) return;
    const { straights } = developed;
    for (let leg = 1; leg < straights.length - 1; leg += 1) {
      const straight = straights[leg] ?? 0;
      if (straight >= least - SHORT || straight < 0) continue;
      report({
        messageId: "short",
        at: (planarPath.legs[leg]?.letter as "A" | null | undefined) ?? "shape",
        values: {
          straight: { mm: straight },
          least: { mm: least },
          diameters: limit.value,
          size: facts.sizeName,
        },
        cite: leastSure(limit.cite, ...courseOf(facts)),
      });
    }
  },
});
