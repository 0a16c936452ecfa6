import { exampleShop } from "../example-shop";
import { faultsOfKind } from "../faults-of-kind";
import { LEGS_OF_TOOLING } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE104",
  name: "link-smaller-than-tooling",
  severity: "unbendable",
  needs: "shop",
  docs: {
    summary: "The clear inside width of a closed link does not take former, pin and two bars.",
    why: "The last bend cannot close: the bar is wrapped round the tools and does not come off them.",
    failing: [
      {
        rows: [{ size: "H10", shape: "51", A: 400, B: 130, C: 130, length: 1225 }],
        shop: exampleShop({ bender: { pins: 60 } }),
      },
    ],
    passing: [
      { rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 160, length: 1625 }], shop: exampleShop() },
    ],
  },
  messages: {
    small:
      "on {machine}: inside width {inside} of the link is below the {least} that former, pin and bars take: use another machine or a smaller pin",
  },
  checkRow(facts, context, report) {
    for (const { fault, machine, outcome } of faultsOfKind("link", facts, context)) {
      const at = (facts.dim("A") ?? 0) < (facts.dim("B") ?? 0) ? "A" : "B";
      const values = { machine, inside: { mm: fault.inside }, least: { mm: fault.least } };
      report({ messageId: "small", outcome, at, values, cite: LEGS_OF_TOOLING });
    }
  },
});
