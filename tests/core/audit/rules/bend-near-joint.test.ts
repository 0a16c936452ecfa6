import rule from "../../../../core/audit/rules/bend-near-joint";
import { ruleCases } from "../rule-cases";

// by hand: B 200 in 20 mm leaves 200 - (70 + 20) = 110 of straight, below 10 x 20
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H20", shape: "11", A: 1500, B: 500, length: 1950, remark: "welded to plate" }] },
    { rows: [{ size: "H20", shape: "11", A: 1500, B: 200, length: 1650, remark: "top" }] },
  ],
  speaks: [
    {
      rows: [{ size: "H20", shape: "11", A: 1500, B: 200, length: 1650, remark: "welded to plate" }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "an end straight of 110 mm is below 200 mm (10 diameters) on a bar noted as welded: ask the designer",
        },
      ],
    },
  ],
});
