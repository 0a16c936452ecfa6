import rule from "../../../../core/audit/rules/guessed-cell";
import { ruleCases } from "../rule-cases";

// a guess is shown
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  speaks: [
    {
      rows: [{ size: "H16", shape: "11", A: "5OO", B: 400, length: 875 }],
      says: [
        {
          cell: "I2",
          outcome: "unsure",
          severity: "doubtful",
          message:
            'dimension A "5OO" is open, and was not used: "5OO" may be 500: a letter stands where a digit belongs',
        },
      ],
    },
  ],
});
