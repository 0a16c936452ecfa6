import rule from "../../../../core/audit/rules/column-link-thin";
import { ruleCases } from "../rule-cases";

// EN 1992-2 9.5.3(101), usingeurocodes.com: a quarter of 40 = 10. From memory: ACI 318 25.7.2.2, #4 above #10
ruleCases(rule, {
  silent: [
    {
      rows: [
        { member: "column C1", size: "H32", shape: "00", A: 3000, length: 3000 },
        { member: "column C1", size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525 },
      ],
    },
    {
      rows: [
        { member: "beam B1", size: "H40", shape: "00", A: 3000, length: 3000 },
        { member: "beam B1", size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525 },
      ],
    },
  ],
  speaks: [
    {
      rows: [
        { member: "column C1", size: "H40", shape: "00", A: 3000, length: 3000 },
        { member: "column C1", size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525 },
      ],
      says: [
        {
          cell: "C3",
          message:
            "links of H8 about bars of 40 mm: 10 mm at least is asked for in a column; ask the designer",
        },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [
        { member: "column C1", size: "#11", shape: "00", A: 120, length: 120 },
        { member: "column C1", size: "#3", shape: "hook135 14 +90 14 +90 14 +90 14 hook135", length: 64 },
      ],
      says: [
        {
          cell: "C3",
          outcome: "unsure",
          message:
            'links of #3 about bars of 1.41": 1/2" at least is asked for in a column; ask the designer',
        },
      ],
    },
  ],
});
