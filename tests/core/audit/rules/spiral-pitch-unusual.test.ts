import rule from "../../../../core/audit/rules/spiral-pitch-unusual";
import { ruleCases } from "../rule-cases";

// from memory: ACI 318 25.7.3.1, 1 to 3 in clear; a #3 bar is 9.525 mm: 150 - 9.525, 30 - 9.525 to 0.1 mm, 4 - 0.375
ruleCases(rule, {
  silent: [
    {
      standard: "BS8666:2005+ACI318:2019",
      rows: [{ size: "#3", shape: "77", A: 500, B: 75, C: 43, length: 66800 }],
    },
    { rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 43, length: 66800 }] },
  ],
  speaks: [
    {
      standard: "BS8666:2005+ACI318:2019",
      rows: [
        { size: "#3", shape: "77", A: 500, B: 150, C: 43, length: 66800 },
        { size: "#3", shape: "77", A: 500, B: 30, C: 43, length: 66800 },
      ],
      says: [
        {
          cell: "J2",
          outcome: "unsure",
          message: "turns at 150 mm leave 140.5 mm, over 76.2 mm: ask the designer",
        },
        {
          cell: "J3",
          outcome: "unsure",
          message: "turns at 30 mm leave 20.5 mm, below 25.4 mm: ask the designer",
        },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#3", length: 2400, remark: 'spiral, pitch 4"' }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message: 'turns at 4" leave 3 5/8", over 3": ask the designer',
        },
      ],
    },
    // the clause is of compression members; a pile's spiral is the designer's
    {
      standard: "ACI318:2019",
      rows: [{ member: "drilled shaft DS1", size: "#3", length: 2400, remark: 'spiral, pitch 4"' }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          severity: "note",
          message: 'turns at 4" leave 3 5/8", over 3": ask the designer',
        },
      ],
    },
  ],
});
