import rule from "../../../../core/audit/rules/length-by-site-deduction";
import { ruleCases } from "../rule-cases";

// by hand: 26 in 16 mm, legs 1000 + 500 + 1000 = 2500, less 1d for each of two slopes = 2468; BS 8666:2005 prints A + B + (C) = 2500.
// Exact: 365 = 500 sin t + 16 cos t at t = 45.02; each bend takes 2 x 48 tan(t/2) - t x 40 = 8.35, so 2483.3
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "26", A: 1000, B: 500, C: 1000, D: 365, length: 2500 }] },
    { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "26", A: 1000, B: 500, C: 1000, D: 365, length: 2475 }],
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message: "length 2475 mm is by site deductions; the centre line needs 2483.3 mm: 8.3 mm short",
          after: { G2: 2500 },
        },
      ],
    },
  ],
});
