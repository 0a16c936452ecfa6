import rule from "../../../../core/audit/rules/lap-below-given";
import { ruleCases } from "../rule-cases";

// the lap given by the remark: 40 x 16 = 640
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "00", length: "12000+650 (lap)", remark: "lap 650" }] },
    { rows: [{ size: "H16", shape: "00", length: "12000+640 (lap)", remark: "lap 40d" }] },
  ],
  speaks: [
    {
      // the project's own table, with no word in the remark
      rows: [{ size: "H16", shape: "00", length: "12000+500 (lap)" }],
      own: [
        ["size", "grade", "case", "lap"],
        [16, null, null, 900],
      ],
      says: [
        {
          cell: "G2",
          message:
            "the length holds a lap of 500 mm, below the 900 mm of the project's own table: ask the designer",
        },
      ],
      notCuredBecause: "the lap is the designer's",
    },
    {
      rows: [{ size: "H16", shape: "00", length: "12000+600 (lap)", remark: "lap 40d" }],
      says: [
        {
          cell: "G2",
          message: "the length holds a lap of 600 mm, below the 640 mm of the remark: ask the designer",
        },
      ],
    },
  ],
});
