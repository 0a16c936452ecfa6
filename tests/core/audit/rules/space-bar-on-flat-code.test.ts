import rule from "../../../../core/audit/rules/space-bar-on-flat-code";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3: 21 lies in one plane, 98 is isometric
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350, remark: "bottom" }] },
    {
      rows: [{ size: "H16", shape: "98", A: 500, B: 200, C: 200, D: 200, length: 1225, remark: "isometric" }],
    },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350, remark: "out of plane" }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "the remark says two planes, but shape 21 is flat: use a sketched shape with an isometric view",
        },
      ],
    },
  ],
});
