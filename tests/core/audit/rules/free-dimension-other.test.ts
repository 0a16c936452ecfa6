import rule from "../../../../core/audit/rules/free-dimension-other";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3: 21 is A + B + (C); another free dimension wants 99 (fendersteel.co.uk/codesbs2005notes.html)
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: "(500)", length: 1350 }] },
    { rows: [{ size: "H16", shape: "99", A: "(500)", B: 400, length: 1350 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "21", A: "(500)", B: 400, C: 500, length: 1350 }],
      says: [{ cell: "I2", message: "A stands in brackets, but C is the free dimension of shape 21" }],
    },
  ],
});
