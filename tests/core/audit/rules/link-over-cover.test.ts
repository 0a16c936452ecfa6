import rule from "../../../../core/audit/rules/link-over-cover";
import { ruleCases } from "../rule-cases";

// 600 - 2 x 40 = 520
ruleCases(rule, {
  silent: [
    {
      rows: [
        { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 520, B: 220, C: 130, length: 1650 },
      ],
    },
    { rows: [{ member: "B1 300x600", size: "H10", shape: "51", A: 590, B: 220, C: 130, length: 1800 }] },
  ],
  speaks: [
    {
      rows: [
        { size: "H10", shape: "51", A: 525, B: 220, C: 130, length: 1675, remark: "300 x 600 mm, 40 cover" },
      ],
      says: [
        {
          cell: "I2",
          message: "A 525 mm is over the 520 mm that the section leaves with 40 mm cover: ask the designer",
        },
      ],
    },
    {
      rows: [
        { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 525, B: 220, C: 130, length: 1675 },
      ],
      says: [
        {
          cell: "I2",
          message: "A 525 mm is over the 520 mm that the section leaves with 40 mm cover: ask the designer",
        },
      ],
    },
  ],
});
