import rule from "../../../../core/audit/rules/column-links-wide-apart";
import { ruleCases } from "../rule-cases";

// from memory: EN 1992-1-1 9.5.3(3), 20 x 16 = 320; the German annex, 12 x 16 = 192
ruleCases(rule, {
  silent: [
    {
      rows: [
        { member: "column C1", size: "H16", shape: "00", A: 3000, length: 3000 },
        { member: "column C1", size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525, spacing: 320 },
      ],
    },
    // a beam's are worked out for shear
    {
      rows: [
        { member: "beam B1", size: "H16", shape: "00", A: 3000, length: 3000 },
        { member: "beam B1", size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525, spacing: 350 },
      ],
    },
  ],
  speaks: [
    {
      rows: [
        { member: "column C1", size: "H16", shape: "00", A: 3000, length: 3000 },
        { member: "column C1", size: "H8", shape: "51", A: 340, B: 340, C: 115, length: 1525, spacing: 350 },
      ],
      says: [
        {
          cell: "N3",
          outcome: "unsure",
          message:
            "links at 350 mm about bars of 16 mm: 320 mm at most are asked for in a column; ask the designer",
        },
      ],
    },
    {
      standard: "DIN-EC2:2013",
      rows: [
        { member: "Stütze C1", size: "16", shape: "00", A: 3000, length: 3000 },
        {
          member: "Stütze C1",
          size: "8",
          shape: "hook135 340 +90 340 +90 340 +90 340 hook135",
          length: 1525,
          spacing: 200,
        },
      ],
      says: [
        {
          cell: "N3",
          outcome: "unsure",
          message:
            "links at 200 mm about bars of 16 mm: 192 mm at most are asked for in a column; ask the designer",
        },
      ],
    },
  ],
});
