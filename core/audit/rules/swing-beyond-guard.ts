import { exampleShop } from "../example-shop";
import { faultsOfKind } from "../faults-of-kind";
import { OF_SHOP_SHEET } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE107",
  name: "swing-beyond-guard",
  severity: "unsafe",
  needs: "shop",
  docs: {
    summary: "In every order of bends some part of the bar swings beyond the guard.",
    why: "The end of a swinging bar strikes whoever or whatever stands there: do not start before the circle is fenced off as the machine's manual and the yard's rules say, or bend on a machine with more room.",
    failing: [
      {
        rows: [{ size: "H16", shape: "11", A: 2500, B: 3000, length: 5475 }],
        shop: exampleShop({ bender: { guardRadius: 2000 } }),
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 2500, B: 3000, length: 5475 }], shop: exampleShop() }],
  },
  messages: {
    beyond:
      "on {machine}: the bar swings to {reach} from the former, and no order keeps it within the guard at {guard}: use another machine, or a guard farther out",
  },
  checkRow(facts, context, report) {
    for (const { fault, machine, outcome } of faultsOfKind("swing", facts, context)) {
      const values = { machine, reach: { mm: fault.reach }, guard: { mm: fault.guard } };
      report({ messageId: "beyond", outcome, at: "shape", values, cite: OF_SHOP_SHEET });
    }
  },
});
