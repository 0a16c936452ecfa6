import rule from "../../../../core/audit/rules/no-free-dimension";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3, 99: free dimension in brackets
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: "(300)", length: 1200 }] },
    { rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: 300, length: 1200 }] },
  ],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "21", A: 500, B: 400, C: "(500)", length: 1350 },
        { size: "H16", shape: "99", A: 500, B: 400, C: 300, length: 1200 },
      ],
      says: [
        {
          cell: "H3",
          message: "shape 99 has no dimension in brackets: say which one takes up the tolerance",
        },
      ],
    },
  ],
});
