import rule from "../../../../core/audit/rules/bars-congested";
import { ruleCases } from "../rule-cases";

// from memory: EN 1992-1-1 8.2(2), clear distance at least the bar and 20 mm: 45 - 25 = 20, below 25
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H25", shape: "00", A: 3000, length: 3000, spacing: 50 }] },
    { rows: [{ size: "H10", shape: "00", A: 3000, length: 3000, spacing: 30 }] },
    // 11 and 16 are inches, in a list of a standard in mm
    { rows: [{ size: "H10", shape: "00", A: 3000, length: 3000, spacing: 11 }] },
    { rows: [{ size: "H16", shape: "00", A: 3000, length: 3000, remark: "@ 16" }] },
    // the column is asked before the remark, and counts of other things are no spacing
    { rows: [{ size: "H25", shape: "00", A: 3000, length: 3000, spacing: 150, remark: "@ 20 c/c" }] },
    ...[
      "@150 EF",
      "lap @ 2 levels",
      "20 nos each end",
      "H16 @ 20 levels",
      "T1",
      "2 sets of 20",
      "@ 20 cm",
    ].map((remark) => ({
      rows: [{ size: "H16", shape: "00", A: 3000, length: 3000, remark }],
    })),
  ],
  speaks: [
    ...["@ 20 c/c", "20 c/c", "61 @ 20 c/c", "H16@20", "spacing 20", "@20 EF", "T1 @ 2 cm", "20mm crs"].map(
      (remark) => ({
        rows: [{ size: "H16", shape: "00", A: 3000, length: 3000, remark }],
        says: [
          {
            cell: "N2",
            outcome: "unsure" as const,
            // 20 - 16 by hand
            message: "H16 at 20 mm leaves 4 mm clear, below 20 mm: ask the designer",
          },
        ],
      }),
    ),
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
