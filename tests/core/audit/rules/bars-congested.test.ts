import rule from "../../../../core/audit/rules/bars-congested";
import { ruleCases } from "../rule-cases";

// from memory: EN 1992-1-1 8.2(2), clear distance at least the bar and 20 mm: 45 - 25 = 20, below 25
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H25", shape: "00", A: 3000, length: 3000, spacing: 50 }] },
    { rows: [{ size: "H10", shape: "00", A: 3000, length: 3000, spacing: 30 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H25", shape: "00", A: 3000, length: 3000, spacing: 45 }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message: "H25 at 45 mm leaves 20 mm clear, below 25 mm: ask the designer",
        },
      ],
    },
  ],
});
