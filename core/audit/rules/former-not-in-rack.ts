import type { BarFacts } from "../../bar/bar-facts";
import { printLength } from "../../units/print-length";
import { exampleShop } from "../example-shop";
import { faultsOfKind } from "../faults-of-kind";
import { OF_SHOP_SHEET } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE101",
  name: "former-not-in-rack",
  severity: "unbendable",
  needs: "shop",
  docs: {
    summary: "No bender of the Shop sheet has a former of the diameter that the bar is bent round.",
    why: "Without the former the bar cannot be bent as scheduled; on a larger one every length and inside width changes.",
    failing: [
      {
        rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 80 }],
        shop: exampleShop(),
      },
      {
        rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }],
        shop: exampleShop({ bender: { formers: "48, 70" } }),
      },
    ],
    passing: [
      { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 64 }], shop: exampleShop() },
      { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 80 }] },
    ],
  },
  messages: {
    none: "on {machine}: no former of {former} is in the rack, which holds {held}: get one, or use another machine",
    larger:
      "on {machine}: no former of {former} is in the rack; on the next larger, {larger}, lengths and inside widths come out otherwise: get the former, or use another machine",
  },
  checkRow(facts, context, report) {
    for (const { fault, machine, outcome } of faultsOfKind("former", facts, context)) {
      const held = fault.held.map((former) => printLength(former, context.standard.unit)).join(", ");
      const values = { machine, former: { mm: fault.former }, held };
      report({ messageId: "none", outcome, at: placeOf(facts), values, cite: OF_SHOP_SHEET });
    }
    for (const { fault, machine, outcome } of faultsOfKind("larger former", facts, context)) {
      const values = { machine, former: { mm: fault.former }, larger: { mm: fault.larger } };
      const at = placeOf(facts);
      report({ messageId: "larger", severity: "doubtful", outcome, at, values, cite: OF_SHOP_SHEET });
    }
  },
});

function placeOf({ row }: BarFacts): "former" | "R" | "shape" {
  if (row.former !== null) return "former";
  return row.radius === null ? "shape" : "R";
}
