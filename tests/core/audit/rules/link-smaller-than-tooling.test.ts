import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/link-smaller-than-tooling";
import { ruleCases } from "../rule-cases";

// former 40 + pin 40 + 2 x 10 = 100 clear inside; a side of 120 outside leaves 100 inside
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H10", shape: "51", A: 400, B: 120, C: 160, length: 1300 }], shop: exampleShop() },
    { rows: [{ size: "H10", shape: "51", A: 400, B: 90, C: 160, length: 1250 }] },
    { rows: [{ size: "H10", shape: "11", A: 400, B: 200, length: 575 }], shop: exampleShop() },
  ],
  speaks: [
    {
      rows: [{ size: "H10", shape: "51", A: 400, B: 115, C: 160, length: 1300 }],
      shop: exampleShop(),
      says: [
        {
          cell: "J2",
          message:
            "on Bench 2: inside width 95 mm of the link is below the 100 mm that former, pin and bars take: use another machine or a smaller pin",
        },
      ],
    },
    {
      rows: [{ size: "H10", shape: "51", A: 110, B: 400, C: 160, length: 1275 }],
      shop: exampleShop(),
      says: [
        {
          cell: "I2",
          message:
            "on Bench 2: inside width 90 mm of the link is below the 100 mm that former, pin and bars take: use another machine or a smaller pin",
        },
      ],
    },
  ],
});
