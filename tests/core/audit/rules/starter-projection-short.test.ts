import rule from "../../../../core/audit/rules/starter-projection-short";
import { ruleCases } from "../rule-cases";

// 40 x 20 = 800; the lap is the project's own figure
ruleCases(rule, {
  silent: [
    {
      rows: [
        { size: "H20", shape: "11", A: 1500, B: 300, length: 1750, remark: "starter, projects 800, lap 800" },
      ],
    },
    { rows: [{ size: "H20", shape: "11", A: 1500, B: 300, length: 1750, remark: "starter, projects 600" }] },
  ],
  speaks: [
    {
      rows: [
        { size: "H20", shape: "11", A: 1500, B: 300, length: 1750, remark: "starter, projects 600, lap 40d" },
      ],
      says: [
        {
          cell: "N2",
          message: "starters projecting 600 mm are below the lap of 800 mm of the row: ask the designer",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "11", A: 1500, B: 300, length: 1750, remark: "starter, projects 600" }],
      own: [
        ["size", "grade", "case", "lap"],
        ["20", "", "", 850],
      ],
      says: [
        {
          cell: "N2",
          message:
            "starters projecting 600 mm are below the lap of 850 mm of the project's own table: ask the designer",
        },
      ],
    },
  ],
});
