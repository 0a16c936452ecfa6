import rule from "../../../../core/audit/rules/shape-limit-broken";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3 (fendersteel.co.uk/codesbs2005): 13: B >= 2(r + d), so 96 for 16 mm; 51: (C) = (D), (C) <= A or B
// r is 32 for 16 mm, Table 2
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "13", A: 300, B: 100, C: 300, length: 650 }] },
    { rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 300, length: 1925 }] },
    // the bend that is too tight over B is the former's to tell
    { rows: [{ size: "H16", shape: "13", A: 300, B: 95, C: 300, length: 650 }] },
    { rows: [{ size: "H16", shape: "13", A: 300, B: 96, C: 300, length: 650 }] },
  ],
  speaks: [
    {
      // two bends of plain 8 mm about 32 side by side: 2 (16 + 8) = 48; which letter is which side is recalled
      standard: "SANS282:2011",
      rows: [{ size: "R8", shape: "60", A: 30, B: 300, length: 825 }],
      says: [
        {
          cell: "I2",
          outcome: "unsure",
          message: "A 30 mm breaks the limit A, B >= 2(r + d) of shape 60 for R8: at least 48 mm",
        },
      ],
    },
    {
      // 33: A >= 12d + 30, which is 174 for 12 mm
      rows: [{ size: "H12", shape: "33", A: 150, B: 80, C: 140, length: 675 }],
      says: [
        {
          cell: "I2",
          message: "A 150 mm breaks the limit A >= 12d + 30 of shape 33 for H12: at least 174 mm",
        },
      ],
    },
    {
      rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 305, length: 1925 }],
      says: [
        {
          cell: "K2",
          message: "C 305 mm breaks the limit C <= A or B of shape 51 for H10: at most 300 mm",
        },
      ],
    },
    {
      rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 150, D: 160, length: 1625 }],
      says: [{ cell: "K2", message: "C 150 mm breaks C = D of shape 51: 160 mm" }],
    },
  ],
});
