import rule from "../../../../core/audit/rules/helix-end-turns-missing";
import { ruleCases } from "../rule-cases";

// 6000 / 150 = 40 turns, and one and a half more for the ends
ruleCases(rule, {
  silent: [
    {
      rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 41.5, length: 64450, remark: "pile length 6000" }],
    },
    { rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 40, length: 62125, remark: "pile" }] },
  ],
  speaks: [
    {
      rows: [{ size: "H8", shape: "77", A: 500, B: 150, C: 40, length: 62125, remark: "pile length 6000" }],
      says: [
        {
          cell: "K2",
          message: "40 turns at 150 mm are 40 for 6000 mm and less than 1.5 more for the ends",
        },
      ],
    },
  ],
});
