import rule from "../../../../core/audit/rules/sum-line-differs";
import { ruleCases } from "../rule-cases";

// 3.16 + 6.32 = 9.48
ruleCases(rule, {
  silent: [
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      foot: [{ member: "TOTAL", mass: 9.48 }],
    },
    {
      rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 }],
      foot: [{ member: "TOTAL", total: 2, mass: 3.2 }],
    },
  ],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      foot: [{ member: "TOTAL", mass: 9.58 }],
      says: [{ cell: "N4", message: "the line gives 9.58 for mass, but the bars above add up to 9.48" }],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 4, total: 4 },
        { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 6, total: 6 },
      ],
      foot: [{ member: "TOTAL", total: 11 }],
      says: [{ cell: "F4", message: "the line gives 11 for bars, but the bars above add up to 10" }],
    },
  ],
});
