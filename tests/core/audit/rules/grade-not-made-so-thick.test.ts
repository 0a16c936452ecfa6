import rule from "../../../../core/audit/rules/grade-not-made-so-thick";
import { ruleCases } from "../rule-cases";

// from memory: BS 4449:2005, B500A to 12 mm
ruleCases(rule, {
  silent: [
    { rows: [{ size: "A12", shape: "00", A: 3000, length: 3000 }] },
    { rows: [{ size: "C32", shape: "00", A: 3000, length: 3000 }] },
  ],
  speaks: [
    {
      rows: [{ size: "A16", shape: "00", A: 3000, length: 3000 }],
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message: "A16: B500A is made up to 12 mm; ask the designer which steel is meant",
        },
      ],
    },
  ],
});
