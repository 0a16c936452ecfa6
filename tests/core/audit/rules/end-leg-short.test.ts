import rule from "../../../../core/audit/rules/end-leg-short";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 2 (tunleyrod.co.uk/barsizes.html): P 130 for 16 mm, 190 for 20
ruleCases(rule, {
  silent: [
    // a path all the way round is a link: 5d of straight after the bend, 80 outside; a main bar needs 150
    {
      standard: "GB50204:2015",
      rows: [{ size: "C10", shape: "80 +90 400 +90 300 +90 400 +90 300 +90 80", length: 1460 }],
    },
    { rows: [{ size: "H16", shape: "21", A: 130, B: 400, C: 130, length: 600 }] },
    { rows: [{ size: "H20", shape: "190 +90 400", length: 550 }] },
    { rows: [{ size: "H20", shape: "hook90 500 +90 400", length: 1250 }] },
    { rows: [{ size: "H16", shape: "00", A: 50, length: 50 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "21", A: 125, B: 400, C: 120, length: 600 }],
      notCuredBecause: "one fix lengthens one of two legs",
      says: [
        {
          cell: "I2",
          message: "end leg A 125 mm is below the least 130 mm for H16 (A, (C) >= P)",
          after: { I2: 130 },
        },
        {
          cell: "K2",
          message: "end leg C 120 mm is below the least 130 mm for H16 (A, (C) >= P)",
          after: { K2: 130 },
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "11", A: 185, B: 500, length: 650 }],
      says: [
        {
          cell: "I2",
          message: "end leg A 185 mm is below the least 190 mm for H20 (A, (B) >= P)",
          after: { I2: 190 },
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "500 +90 189", length: 650 }],
      says: [{ cell: "H2", message: "an end leg of 189 mm is below the least 190 mm for H20" }],
    },
  ],
});
