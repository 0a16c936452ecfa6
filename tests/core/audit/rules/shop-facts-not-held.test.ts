import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/shop-facts-not-held";
import { ruleCases } from "../rule-cases";

const BAR = { size: "H12", shape: "11", A: 900, B: 900, length: 1775 };
const TRIALS = [["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 90, 85]];

ruleCases(rule, {
  silent: [
    { rows: [BAR] },
    { rows: [BAR], shop: exampleShop({ limits: { hoist: 500, temperature: 15 }, trials: TRIALS }) },
  ],
  speaks: [
    {
      // many rows, one note
      rows: [BAR, BAR, BAR],
      shop: exampleShop({
        bender: { pins: null, formers: null },
        plates: [["Shear 1", "cut", "H20", 500, 2]],
        limits: { hoist: 500 },
      }),
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "the Shop sheet does not hold of Bench 2 the plate, pins, formers in the rack; the temperature; trial bends, so what needs them was not checked",
        },
      ],
    },
    {
      rows: [BAR],
      shop: [["notes of the yard"]],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "the Shop sheet does not hold any bender; what hoist or crane may lift; the temperature; trial bends, so what needs them was not checked",
        },
      ],
    },
  ],
});
