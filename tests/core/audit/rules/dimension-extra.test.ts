import rule from "../../../../core/audit/rules/dimension-extra";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3: 11 takes A and B; 12 takes A, B and R, which may stand in the fifth column
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] },
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, C: 0, length: 875 }] },
    { rows: [{ size: "H20", shape: "12", A: 500, B: 500, R: 200, length: 900 }] },
    // codes 2 and 17 are of another list, and so is the 1 beside them
    {
      rows: [
        { size: "16", shape: "1", A: 310, B: 2650, G: 310, length: 3270 },
        { size: "20", shape: "2", A: 400, B: 1600, length: 2000 },
        { size: "20", shape: "2", A: 600, B: 4200, length: 4800 },
        { size: "12", shape: "17", B: 900, C: 300, length: 1200 },
      ],
    },
    { rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: 300, D: 200, length: 1300 }] },
  ],
  speaks: [
    {
      // pages print code 61 as 2(A + B) + 12d: a link of two sides
      standard: "BS4466:1989",
      rows: [{ size: "R8", shape: "61", A: 310, B: 310, C: 310, length: 1350 }],
      says: [{ cell: "K2", message: "shape 61 takes no C, but 310 mm is given", after: { K2: null } }],
    },
    {
      // the letters of a recalled type may be others, but two bars beside it go without
      standard: "ACI318:2019",
      rows: [
        { size: "#8", shape: "2", A: 16, B: 104, length: 120 },
        { size: "#8", shape: "2", A: 16, B: 60, length: 76 },
        { size: "#8", shape: "2", A: 16, B: 104, C: 16, length: 136 },
      ],
      says: [{ cell: "K4", outcome: "unsure", message: `shape 2 takes no C, but 1'-4" is given` }],
    },
    {
      // the letters of a recalled type may be others
      standard: "ACI318:2019",
      rows: [{ size: "#8", shape: "2", A: 16, B: 104, C: 16, length: 136 }],
      says: [
        {
          cell: "K2",
          outcome: "unsure",
          severity: "note",
          message: `shape 2 takes no C, but 1'-4" is given`,
        },
      ],
    },
    {
      // 11 of 500 and 400 makes 875, 21 of 500, 400 and 300 makes 1150: the code is what is wrong
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, C: 300, length: 1150 }],
      says: [{ cell: "K2", message: "shape 11 takes no C, but 300 mm is given" }],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, C: 300, length: 875 }],
      says: [{ cell: "K2", message: "shape 11 takes no C, but 300 mm is given", after: { K2: null } }],
    },
  ],
});
