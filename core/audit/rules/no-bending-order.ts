import { exampleShop } from "../example-shop";
import { faultsOfKind } from "../faults-of-kind";
import { LEGS_OF_TOOLING } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE106",
  name: "no-bending-order",
  severity: "unbendable",
  needs: "shop",
  docs: {
    summary: "In no order can all bends be made without the bar meeting former, pin, back-rest or itself.",
    why: "The bar is cut and half bent before it shows. Another machine, another former or a lap may help: ask the designer before the shape is changed.",
    failing: [
      { rows: [{ size: "H12", shape: "21", A: 900, B: 120, C: 900, length: 1875 }], shop: exampleShop() },
    ],
    passing: [
      { rows: [{ size: "H12", shape: "21", A: 900, B: 600, C: 900, length: 2350 }], shop: exampleShop() },
    ],
  },
  messages: {
    blocked: "on {machine}: {reason}: use another machine",
    pin: "{reason}",
  },
  checkRow(facts, context, report) {
    for (const { fault, machine, outcome } of faultsOfKind("order", facts, context)) {
      const values = { machine, reason: fault.reason };
      report({ messageId: "blocked", outcome, at: "shape", values, cite: LEGS_OF_TOOLING });
    }
    for (const { fault, outcome } of faultsOfKind("pin", facts, context)) {
      const values = { reason: fault.reason };
      report({ messageId: "pin", outcome, at: "size", values, cite: LEGS_OF_TOOLING });
    }
  },
});
