import rule from "../../../../core/audit/rules/sketch-without-length";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3, 99: the length is to be calculated
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: 300, length: 1200 }] }],
  speaks: [
    {
      rows: [{ size: "H16", shape: "99", A: 500, B: 400, C: 300 }],
      says: [{ cell: "G2", message: "shape 99 has no formula, and no length is given" }],
    },
  ],
});
