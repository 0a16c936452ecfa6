import rule from "../../../../core/audit/rules/bend-near-joint";
import { ruleCases } from "../rule-cases";

// by hand: B 200 in 20 mm leaves 200 - (70 + 20) = 110 of straight, 5.5 d; B 140 leaves 50, below 3 x 20.
// EN 1992-1-1 Table 8.1N b), from memory: a bend 3 d or more from a weld is made on 5 d
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H20", shape: "11", A: 1500, B: 200, length: 1650, remark: "welded to plate" }] },
    { rows: [{ size: "H20", shape: "11", A: 1500, B: 500, length: 1950, remark: "coupler at B" }] },
    { rows: [{ size: "H20", shape: "11", A: 1500, B: 140, length: 1600, remark: "top" }] },
    { rows: [{ size: "H20", shape: "11", A: 1500, B: 140, length: 1600, remark: "weld 200 from bend" }] },
  ],
  speaks: [
    {
      // 3 x 25 = 75
      rows: [
        { size: "H25", shape: "11", A: 450, B: 1500, length: 1900, remark: "weld to plate 40 from bend" },
      ],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "40 mm between bend and joint is below 75 mm (3 diameters) on a bar noted as weld: ask the designer",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "11", A: 1500, B: 140, length: 1600, remark: "welded to plate" }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "an end straight of 50 mm is below 60 mm (3 diameters) on a bar noted as welded: ask the designer",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "11", A: 1500, B: 200, length: 1650, remark: "coupler at B" }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "an end straight of 110 mm is below 200 mm (10 diameters) on a bar noted as coupler: ask the designer",
        },
      ],
    },
  ],
});
