import { exampleShop } from "../example-shop";
import { faultsOfKind } from "../faults-of-kind";
import { OF_SHOP_SHEET } from "../practice.data";
import { defineRule } from "../rule";

const tenth = (degrees: number): number => Math.round(degrees * 10) / 10;

export default defineRule({
  code: "MACHINE105",
  name: "beyond-largest-angle",
  severity: "unbendable",
  needs: "shop",
  docs: {
    summary: "The compensated angle of a bend is beyond the largest angle that the machine turns.",
    why: "The bend stays open by what is missing: close it in a second stroke only if the machine's manual allows one, or take a smaller former not below the standard's least.",
    failing: [
      {
        rows: [{ size: "H12", shape: "13", A: 500, B: 75, C: 160, length: 700 }],
        shop: exampleShop({ bender: { largestAngle: 170 } }),
      },
    ],
    passing: [
      { rows: [{ size: "H12", shape: "13", A: 500, B: 75, C: 160, length: 700 }], shop: exampleShop() },
    ],
  },
  messages: {
    beyond:
      "on {machine}: bend {bend} of {wanted} degrees is bent to {bentTo}, beyond the {largest} that it turns: use another machine",
    guessed:
      "on {machine}: bend {bend} of {wanted} degrees needs about {bentTo}, a guess without trials, and it turns {largest}: make a trial bend first",
  },
  checkRow(facts, context, report) {
    for (const { fault, machine, outcome } of faultsOfKind("angle", facts, context)) {
      const { bend, wanted, bentTo, largest, sure } = fault;
      report({
        messageId: sure ? "beyond" : "guessed",
        outcome,
        at: "shape",
        values: { machine, bend, wanted: tenth(wanted), bentTo: tenth(bentTo), largest: tenth(largest) },
        cite: OF_SHOP_SHEET,
      });
    }
  },
});
