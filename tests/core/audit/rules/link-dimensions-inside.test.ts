import rule from "../../../../core/audit/rules/link-dimensions-inside";
import { ruleCases } from "../rule-cases";

// 600 - 2 x 40 - 2 x 10 = 500; 300 - 80 - 20 = 200
ruleCases(rule, {
  silent: [
    {
      rows: [
        { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 520, B: 220, C: 130, length: 1650 },
      ],
    },
    {
      rows: [
        { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 500, B: 150, C: 130, length: 1475 },
      ],
    },
  ],
  speaks: [
    {
      rows: [
        { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 500, B: 200, C: 130, length: 1575 },
      ],
      says: [
        {
          cell: "I2",
          outcome: "unsure",
          message:
            "500 mm x 200 mm is the section less cover, measured inside the link: dimensions are to the outside of the bar, ask the designer",
        },
      ],
    },
  ],
});
