import type { ExampleRow } from "../../../../core/audit/rule";
import rule from "../../../../core/audit/rules/count-from-spacing";
import { ruleCases } from "../rule-cases";

const bars = (count: number, remark: string): ExampleRow => ({
  size: "H10",
  shape: "00",
  A: 2000,
  length: 2000,
  members: 1,
  each: count,
  total: count,
  spacing: 150,
  remark,
});

// 3000 / 150 = 20 gaps, 21 bars; 3100 / 150 = 20.67: 21 bars leave a gap over, 22 none wider than 150
ruleCases(rule, {
  silent: [
    { rows: [bars(21, "over 3000")] },
    { rows: [bars(42, "EF over 3000")] },
    { rows: [bars(21, "over 3100")] },
    { rows: [bars(22, "over 3100")] },
    { rows: [bars(20, "slab")] },
  ],
  speaks: [
    {
      rows: [bars(20, "over 3000")],
      says: [
        {
          cell: "E2",
          outcome: "unsure",
          message: "20 bars at 150 mm over 3000 mm: 21 make gaps of 150 mm at most; ask the designer",
        },
      ],
    },
    {
      rows: [bars(23, "over 3100")],
      says: [
        {
          cell: "E2",
          outcome: "unsure",
          message: "23 bars at 150 mm over 3100 mm: 22 make gaps of 150 mm at most; ask the designer",
        },
      ],
    },
  ],
});
