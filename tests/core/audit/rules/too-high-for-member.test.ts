import rule from "../../../../core/audit/rules/too-high-for-member";
import { ruleCases } from "../rule-cases";

// 200 - 2 x 25 = 150; 500 - 2 x 50 = 400
ruleCases(rule, {
  silent: [
    {
      rows: [{ member: "slab 200 cover 25", size: "H10", shape: "21", A: 600, B: 150, C: 600, length: 1325 }],
    },
    // lies flat round an opening
    {
      rows: [{ member: "slab 200 cover 25", size: "H10", shape: "21", A: 600, B: 900, C: 600, length: 2075 }],
    },
    { rows: [{ member: "B1", size: "H10", shape: "21", A: 600, B: 170, C: 600, length: 1325 }] },
    { rows: [{ member: "slab 200 cover 25", size: "H10", shape: "11", A: 600, B: 170, length: 750 }] },
  ],
  speaks: [
    {
      rows: [
        { member: "slab 200 cover 25", size: "H10", shape: "21", A: 600, B: 170, C: 600, length: 1325 },
        {
          member: "raft 500 cover 50",
          size: "H16",
          shape: "200 -90 440 +90 300 +90 440 -90 200",
          length: 1500,
          remark: "chair",
        },
      ],
      says: [
        {
          cell: "J2",
          outcome: "unsure",
          message:
            "the bar stands 170 mm high in 200 mm of concrete, over the 150 mm that 25 mm cover leaves, unless it lies flat: ask the designer",
        },
        {
          cell: "J3",
          outcome: "unsure",
          message:
            "the bar stands 440 mm high in 500 mm of concrete, over the 400 mm that 50 mm cover leaves, unless it lies flat: ask the designer",
        },
      ],
    },
  ],
});
