import rule from "../../../../core/audit/rules/length-off-step";
import { ruleCases } from "../rule-cases";

// BS 8666:2005: lengths go up to the next 25 (from memory)
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] },
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 868 }],
      says: [{ cell: "G2", message: "length 868 mm is no multiple of 25 mm", after: { G2: 875 } }],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 876 }],
      says: [{ cell: "G2", message: "length 876 mm is no multiple of 25 mm", after: { G2: 900 } }],
    },
  ],
});
