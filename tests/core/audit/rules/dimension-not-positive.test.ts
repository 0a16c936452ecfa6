import rule from "../../../../core/audit/rules/dimension-not-positive";
import { ruleCases } from "../rule-cases";

// a leg has a length
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] }],
  speaks: [
    {
      rows: [{ size: "H16", shape: "21", A: 500, B: 0, C: 500, length: 1000 }],
      says: [{ cell: "J2", message: "B of shape 21 is 0 mm: it must be over 0, correct it" }],
    },
  ],
});
