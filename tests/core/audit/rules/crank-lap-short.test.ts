import rule from "../../../../core/audit/rules/crank-lap-short";
import { ruleCases } from "../rule-cases";

// 40 x 20 = 800; the lap is the project's own figure
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H20", shape: "26", A: 3000, B: 300, C: 800, D: 60, length: 4100, remark: "lap 800" }] },
    { rows: [{ size: "H20", shape: "26", A: 3000, B: 300, C: 600, D: 60, length: 3900 }] },
    { rows: [{ size: "H20", shape: "11", A: 3000, B: 300, length: 3300, remark: "lap 800" }] },
  ],
  speaks: [
    {
      rows: [{ size: "H20", shape: "26", A: 3000, B: 300, C: 600, D: 60, length: 3900, remark: "lap 40d" }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: "600 mm beyond the crank is below the lap of 800 mm of the row: ask the designer",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "26", A: 3000, B: 300, C: 600, D: 60, length: 3900 }],
      own: [
        ["size", "grade", "case", "lap"],
        ["20", "", "", 850],
      ],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "600 mm beyond the crank is below the lap of 850 mm of the project's own table: ask the designer",
        },
      ],
    },
  ],
});
