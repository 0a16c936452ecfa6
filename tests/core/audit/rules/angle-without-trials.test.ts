import { expect } from "vitest";
import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/angle-without-trials";
import { ruleCases } from "../rule-cases";

const TRIAL = ["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 90, 85];
const MORE = [
  ["2031-03-03", "Bench 2", "H12", 48, "H", "bar", "K4", 95, 90],
  ["2031-03-04", "Bench 2", "H12", 48, "H", "bar", "K5", 90, 85.5],
];
const BAR = { size: "H12", shape: "11", A: 900, B: 900, length: 1775 };
const THICKER = { size: "H20", shape: "11", A: 900, B: 900, length: 1725 };

ruleCases(rule, {
  silent: [
    { rows: [BAR], shop: exampleShop({ trials: [TRIAL, ...MORE] }) },
    // no log at all is a fact that the Shop sheet does not hold, told there once
    { rows: [THICKER], shop: exampleShop() },
    { rows: [THICKER] },
  ],
  speaks: [
    {
      rows: [
        BAR,
        THICKER,
        { ...THICKER, A: 800 },
        { ...THICKER, shape: "15", A: 800, B: 600, C: 600, length: 1400 },
      ],
      shop: exampleShop({ trials: [TRIAL, ...MORE] }),
      says: [
        {
          cell: "H3",
          outcome: "unsure",
          message: expect.stringMatching(
            /^H20 on former 140 mm, bends of \d+, 90 degrees \(rows: 3\): make a trial bend first: no trial of 20 mm/,
          ) as string,
        },
      ],
    },
  ],
});
