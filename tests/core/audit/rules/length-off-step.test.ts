import rule from "../../../../core/audit/rules/length-off-step";
import { ruleCases } from "../rule-cases";

// BS 8666:2005: lengths go up to the next 25 (from memory)
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] },
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400 }] },
    // wrong by more than rounding: that is told, with the right length
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 1990 }] },
    // the habit of a sheet is told once
    { rows: [1020, 1530, 2010, 2540, 3080].map((length) => ({ size: "H16", shape: "00", length })) },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 868 }],
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message: "length 868 mm is no multiple of 25 mm",
          after: { G2: 875 },
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 876 }],
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message: "length 876 mm is no multiple of 25 mm",
          after: { G2: 875 },
        },
      ],
    },
  ],
});
