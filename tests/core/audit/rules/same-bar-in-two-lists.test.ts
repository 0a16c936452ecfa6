import rule from "../../../../core/audit/rules/same-bar-in-two-lists";
import { ruleCases } from "../rule-cases";

// starters listed with foundation and column: common practice
ruleCases(rule, {
  silent: [
    {
      sheets: {
        Foundation: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
        Column: [{ member: "C2", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
      },
    },
    {
      rows: [
        { member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 },
        { member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 },
      ],
    },
  ],
  speaks: [
    {
      sheets: {
        Foundation: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
        Column: [{ member: "C1", mark: "S1", size: "H20", shape: "11", A: 1500, B: 300, length: 1750 }],
      },
      says: [
        { cell: "B2", message: "mark S1 of C1 stands in sheet Foundation, row 2 too: is it counted twice?" },
      ],
    },
  ],
});
