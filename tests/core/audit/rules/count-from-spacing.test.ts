import rule from "../../../../core/audit/rules/count-from-spacing";
import { ruleCases } from "../rule-cases";

// 3000 / 150 = 20 gaps, 21 bars
ruleCases(rule, {
  silent: [
    {
      rows: [
        {
          size: "H10",
          shape: "00",
          A: 2000,
          length: 2000,
          members: 1,
          each: 21,
          total: 21,
          spacing: 150,
          remark: "over 3000",
        },
      ],
    },
    {
      rows: [
        {
          size: "H10",
          shape: "00",
          A: 2000,
          length: 2000,
          members: 1,
          each: 42,
          total: 42,
          spacing: 150,
          remark: "EF over 3000",
        },
      ],
    },
    {
      rows: [
        {
          size: "H10",
          shape: "00",
          A: 2000,
          length: 2000,
          members: 1,
          each: 20,
          total: 20,
          spacing: 150,
          remark: "slab",
        },
      ],
    },
  ],
  speaks: [
    {
      rows: [
        {
          size: "H10",
          shape: "00",
          A: 2000,
          length: 2000,
          members: 1,
          each: 20,
          total: 20,
          spacing: 150,
          remark: "over 3000",
        },
      ],
      says: [
        {
          cell: "E2",
          outcome: "unsure",
          message: "20 bars at 150 mm over 3000 mm should be 21",
          after: { E2: 21 },
        },
      ],
    },
  ],
});
