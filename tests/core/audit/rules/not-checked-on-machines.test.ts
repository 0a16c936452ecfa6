import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/not-checked-on-machines";
import { ruleCases } from "../rule-cases";

const CHAIR = { size: "H12", shape: "98", A: 600, B: 600, C: 600, D: 600, length: 2325 };

ruleCases(rule, {
  silent: [
    // two formers of the rack: an order is searched with each bend about its own
    {
      rows: [{ size: "H12", shape: "400 +90r24 400 +90r70 400", length: 1125 }],
      shop: exampleShop(),
    },
    { rows: [{ size: "H12", shape: "11", A: 900, B: 900, length: 1775 }], shop: exampleShop() },
    { rows: [CHAIR] },
  ],
  speaks: [
    {
      rows: [CHAIR, { ...CHAIR, A: 650 }],
      shop: exampleShop(),
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "bends in more than one plane, so no order of bends was searched (such rows: 2): try one bar, and stop where it meets tools or itself",
        },
      ],
    },
    {
      // 12 mm round 1000 inside: xi = 500 x 1006 x 2 / (200000 x 12) = 0.42, above 0.15
      rows: [
        { size: "H12", shape: "12", A: 2000, B: 2000, R: 1000, length: 3575 },
        { size: "H12", shape: "75", A: 600, B: 300, length: 2150 },
      ],
      shop: exampleShop(),
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: "rolled, not bent about a former, so no bender was checked (such rows: 2): try one bar",
        },
      ],
    },
    {
      rows: [{ size: "H12", shape: `${"400 +30 400 -30 ".repeat(7)}400`, length: 6000 }],
      shop: exampleShop(),
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "more bends than are searched for an order (such rows: 1): try one bar, and stop where it meets tools or itself",
        },
      ],
    },
  ],
});
