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
      // ACI 318 10.7.6.4, from memory; at 45 degrees the bar is bent up in a beam
      standard: "ACI318:2019",
      rows: [
        { mark: "C1", size: "#8", shape: "120in +9 12in -9 30in" },
        { mark: "T1", size: "#8", shape: "60in +45 24in -45 60in" },
      ],
      says: [
        {
          cell: null,
          outcome: "unsure",
          severity: "note",
          message: "1 bars are cranked, such as mark C1: links are asked for close to the bends",
        },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#8", shape: "120in +45 24in -45 30in", remark: "lap 40 in" }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: `2'-6" beyond the crank is below the lap of 3'-4" of the row: ask the designer`,
        },
      ],
    },
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
