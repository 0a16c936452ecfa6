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
