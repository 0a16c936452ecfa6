import { expect } from "vitest";
import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/no-bending-order";
import { ruleCases } from "../rule-cases";

// legs of 900 both swing over a base of 100: neither end can pass the other's leg (common practice: narrow U bars
// are made on a bender with a smaller former, or in two)
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H12", shape: "21", A: 900, B: 600, C: 900, length: 2350 }], shop: exampleShop() },
    { rows: [{ size: "H12", shape: "21", A: 900, B: 100, C: 900, length: 1875 }] },
    {
      rows: [{ size: "H12", shape: "21", A: 900, B: 100, C: 900, length: 1875 }],
      shop: exampleShop({ bender: { orbitRadius: null } }),
    },
  ],
  speaks: [
    {
      rows: [{ size: "H12", shape: "21", A: 900, B: 100, C: 900, length: 1875 }],
      shop: exampleShop(),
      says: [
        {
          cell: "H2",
          // blocked only beyond 90 degrees, and without trials how far beyond is a guess
          outcome: "unsure",
          message: expect.stringMatching(
            /^on Bench 2: bend 2 cannot be made after bend 1: swinging part against the held part at \d+ degrees/,
          ) as string,
        },
      ],
    },
    {
      // three trials bear the overbend of 8 degrees, so the same is sure
      rows: [{ size: "H12", shape: "21", A: 900, B: 100, C: 900, length: 1875 }],
      shop: exampleShop({
        trials: [
          ["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 98, 90],
          ["2031-03-03", "Bench 2", "H12", 48, "H", "bar", "K4", 98, 90],
          ["2031-03-03", "Bench 2", "H12", 48, "H", "bar", "K4", 98, 90],
        ],
      }),
      says: [{ cell: "H2", message: expect.stringMatching(/^on Bench 2: bend 2 cannot be made/) as string }],
    },
    {
      // 70 + 20 + 20 = 110 on an orbit of 100
      rows: [{ size: "H20", shape: "11", A: 900, B: 900, length: 1725 }],
      shop: exampleShop({ bender: { orbitRadius: 100 } }),
      says: [
        {
          cell: "C2",
          message:
            "on Bench 2 a bar of 20 mm does not pass between a former of 140 mm and a pin of 40 mm on an orbit of 100 mm: half the former, the bar and half the pin make 110 mm",
        },
      ],
    },
  ],
});
