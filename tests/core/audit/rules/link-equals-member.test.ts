import rule from "../../../../core/audit/rules/link-equals-member";
import { ruleCases } from "../rule-cases";

// a member of 300 x 600
ruleCases(rule, {
  silent: [
    { rows: [{ member: "B1 300x600", size: "H10", shape: "51", A: 520, B: 220, C: 130, length: 1650 }] },
    { rows: [{ member: "B1", size: "H10", shape: "51", A: 600, B: 300, C: 130, length: 1975 }] },
  ],
  speaks: [
    {
      rows: [{ member: "B1 300x600", size: "H10", shape: "51", A: 600, B: 220, C: 130, length: 1800 }],
      says: [
        { cell: "I2", message: "A 600 mm is the member's own size: no cover is left, ask the designer" },
      ],
    },
    {
      rows: [{ member: "B1 300x600", size: "H10", shape: "51", A: 520, B: 300, C: 130, length: 1800 }],
      says: [
        { cell: "J2", message: "B 300 mm is the member's own size: no cover is left, ask the designer" },
      ],
    },
  ],
});
