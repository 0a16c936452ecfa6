import rule from "../../../../core/audit/rules/hook-tail-short";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 2 (tunleyrod.co.uk/barsizes.html): P of links with bends below 150 is 130 for 10 mm, 160 for 12,
// and 120 for 10 mm in general, also of links that are bent by 150 or more
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 130, D: 130, length: 1600 }] },
    { rows: [{ size: "H12", shape: "51", A: 400, B: 300, C: 160, length: 1625 }] },
    { rows: [{ size: "H16", shape: "21", A: 100, B: 400, C: 100, length: 550 }] },
  ],
  speaks: [
    {
      // 2(400 + 300 + 100) - 2.5 x 20 - 5 x 10 = 1500; with 130 it is 1560, up to 1575
      rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 100, length: 1500 }],
      says: [
        {
          cell: "K2",
          message:
            "link end C 100 mm is below the least 130 mm for H10: so long it would need a bar of 1575 mm, ask the designer",
        },
      ],
    },
    {
      rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 125, length: 1575 }],
      says: [
        {
          cell: "K2",
          message:
            "link end C 125 mm is below the 130 mm of links for H10, and not below the 120 mm of other bends: ask the designer whether it holds",
          severity: "note",
        },
      ],
    },
  ],
});
