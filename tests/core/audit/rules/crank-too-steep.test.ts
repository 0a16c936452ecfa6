import rule from "../../../../core/audit/rules/crank-too-steep";
import { ruleCases } from "../rule-cases";

// common practice: 1 in 6. By hand: 65 = 150 sin t + 20 cos t gives t = 17.8 degrees, 1 in 3.1
ruleCases(rule, {
  silent: [
    // 75 = 310 sin t + 20 cos t gives t = 10.3 degrees, 1 in 5.5: 70.7 makes 1 in 6, and is written 75 where it is rounded up to 5 mm
    {
      rows: [
        { member: "Column C1", size: "H20", shape: "26", A: 1000, B: 310, C: 3600, D: 75, length: 4925 },
      ],
    },
    // 95 = 420 sin t + 25 cos t gives t = 9.6 degrees, 1 in 5.9
    {
      rows: [{ member: "Column C1", size: "H25", shape: "26", A: 2900, B: 420, C: 900, D: 95, length: 4225 }],
    },
    {
      rows: [
        { member: "Column C1", size: "H20", shape: "26", A: 1000, B: 300, C: 1000, D: 65, length: 2300 },
      ],
    },
    { rows: [{ member: "B1", size: "H20", shape: "26", A: 1000, B: 150, C: 1000, D: 65, length: 2150 }] },
  ],
  speaks: [
    {
      // 80 = 310 sin t + 20 cos t gives t = 11.2 degrees, 1 in 5; 75 would be 1 in 5.5 all the same
      rows: [
        { member: "Column C1", size: "H20", shape: "26", A: 1000, B: 310, C: 3600, D: 80, length: 4925 },
      ],
      says: [
        {
          cell: "L2",
          outcome: "unsure",
          message: "the crank slopes 1 in 5, steeper than 1 in 6 for a column bar: ask the designer",
        },
      ],
    },
    {
      // 15 degrees: 1 / tan 15 = 3.7
      rows: [{ member: "Column C1", size: "H20", shape: "1000 +15 200 -15 1000", length: 2200 }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: "the crank slopes 1 in 3.7, steeper than 1 in 6 for a column bar: ask the designer",
        },
      ],
    },
    {
      // ACI 318 10.7.4.1, from memory: 65 = 150 sin t + 19.05 cos t gives 18.2 degrees, 1 in 3.04
      standard: "BS8666:2005+ACI318:2019",
      rows: [{ member: "Column C1", size: "#6", shape: "26", A: 1000, B: 150, C: 1000, D: 65, length: 2150 }],
      says: [
        {
          cell: "L2",
          outcome: "unsure",
          severity: "off-standard",
          message: "the crank slopes 1 in 3, steeper than 1 in 6 for a column bar: ask the designer",
        },
      ],
    },
    {
      rows: [
        { member: "Column C1", size: "H20", shape: "26", A: 1000, B: 150, C: 1000, D: 65, length: 2150 },
      ],
      says: [
        {
          cell: "L2",
          outcome: "unsure",
          message: "the crank slopes 1 in 3.1, steeper than 1 in 6 for a column bar: ask the designer",
        },
      ],
    },
  ],
});
