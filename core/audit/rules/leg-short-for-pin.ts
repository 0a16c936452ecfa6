import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import { exampleShop } from "../example-shop";
import { faultsOfKind } from "../faults-of-kind";
import { LEGS_OF_TOOLING } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE103",
  name: "leg-short-for-pin",
  severity: "unbendable",
  needs: "shop",
  docs: {
    summary:
      "An end leg is too short for the pin to bear on while it swings, and for the back-rest while it is held.",
    why: "The pin slips off the end of the bar, or nothing holds it. It is never held there by hand. A smaller orbit or another machine may take it; the standard's least leg says nothing of the machine.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: 800, B: 135, length: 925 }], shop: exampleShop() }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 800, B: 180, length: 950 }], shop: exampleShop() }],
  },
  messages: {
    short:
      "on {machine}: leg {leg} of {length} is too short; pin and back-rest need {least}: use another machine or a smaller pin",
  },
  checkRow(facts, context, report) {
    const told = new Set<string>();
    for (const { fault, machine, outcome } of faultsOfKind("leg", facts, context)) {
      const { leg, length, least } = fault;
      // both ends of a link have one dimension
      const cause = `${leg} ${length} ${least}`;
      if (told.has(cause)) continue;
      told.add(cause);
      report({
        messageId: "short",
        outcome,
        at: DIMENSION_LETTERS.find((letter) => letter === leg) ?? "shape",
        values: { machine, leg, length: { mm: length }, least: { mm: least } },
        cite: LEGS_OF_TOOLING,
      });
    }
  },
});
