import rule from "../../../../core/audit/rules/longer-than-lorry";
import { ruleCases } from "../rule-cases";

// common practice: a load of 13.5 m
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H32", shape: "00", A: 13500, length: 13500 }] },
    { rows: [{ size: "H12", shape: "00", A: 15000, length: 15000 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H32", shape: "00", A: 15000, length: 15000 }],
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message: "a bar of 15000 mm is longer than the 13500 mm that an ordinary lorry carries",
        },
      ],
    },
  ],
});
