import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/swing-beyond-guard";
import { ruleCases } from "../rule-cases";

const LONG = { size: "H16", shape: "11", A: 2500, B: 3000, length: 5450 };

// the shorter leg swings: 2500 - 48 of straight and a quarter of 2 pi 40 = 62.8 make 2514.8 along the tangent, 40
// from the former's centre: sqrt(2514.8^2 + 40^2) + 8 = 2523.1 to the far side of the bar's end
ruleCases(rule, {
  silent: [
    { rows: [LONG], shop: exampleShop({ bender: { guardRadius: 2524 } }) },
    { rows: [LONG], shop: exampleShop({ bender: { guardRadius: null } }) },
    { rows: [LONG] },
  ],
  speaks: [
    {
      rows: [LONG],
      shop: exampleShop({ bender: { guardRadius: 2520 } }),
      says: [
        {
          cell: "H2",
          message:
            "on Bench 2: the bar swings to 2523.1 mm from the former, and no order keeps it within the guard at 2520 mm: use another machine, or a guard farther out",
        },
      ],
    },
  ],
});
