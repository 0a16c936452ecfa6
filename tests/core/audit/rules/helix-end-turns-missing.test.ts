import rule from "../../../../core/audit/rules/helix-end-turns-missing";
import { ruleCases } from "../rule-cases";

// 6000 / 150 = 40 turns, and one and a half more at each end: 43
ruleCases(rule, {
  silent: [
    {
      rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 43, length: 66800, remark: "pile length 6000" }],
    },
    { rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 40, length: 62125, remark: "pile" }] },
  ],
  speaks: [
    {
      rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 42, length: 65225, remark: "pile length 6000" }],
      says: [
        {
          cell: "K2",
          message: "42 turns at 150 mm are 40 for 6000 mm and less than 1.5 more at each end",
        },
      ],
    },
    {
      rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 40, length: 62125, remark: "pile length 6000" }],
      says: [
        {
          cell: "K2",
          message: "40 turns at 150 mm are 40 for 6000 mm and less than 1.5 more at each end",
        },
      ],
    },
  ],
});
