import rule from "../../../../core/audit/rules/angle-not-of-code";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3: the bend of 11 is a right angle
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, remark: "bend 90 deg" }] },
    {
      rows: [{ size: "H16", shape: "26", A: 1000, B: 500, C: 1000, D: 365, length: 2500, remark: "45 deg" }],
    },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, remark: "bend 120 deg" }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: "the remark names 120 degrees, but every bend of shape 11 is 90",
        },
      ],
    },
  ],
});
