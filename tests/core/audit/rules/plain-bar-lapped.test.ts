import rule from "../../../../core/audit/rules/plain-bar-lapped";
import { ruleCases } from "../rule-cases";

// common practice: a lap for ribbed bars does not hold a plain one
ruleCases(rule, {
  silent: [{ rows: [{ size: "H12", shape: "11", A: 2000, B: 200, length: 2200, remark: "lap 40d" }] }],
  speaks: [
    {
      rows: [{ size: "R12", shape: "11", A: 2000, B: 200, length: 2200, remark: "lap 40d" }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "R12 is a plain bar with a lap or anchorage noted: ask the designer for the length a plain bar needs",
        },
      ],
    },
  ],
});
