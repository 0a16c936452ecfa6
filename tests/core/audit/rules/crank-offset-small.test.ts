import rule from "../../../../core/audit/rules/crank-offset-small";
import { ruleCases } from "../rule-cases";

// by hand: a leg of 100 at 9 degrees steps aside 100 sin 9 + 20 cos 9 = 15.6 + 19.8 = 35.4 overall, 15.4 between centres;
// 200 gives 31.3 + 19.8 = 51.0; an overall offset of 35 leaves 35 - 20 = 15 between the centre lines of a 20 mm bar
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H20", shape: "26", A: 1000, B: 300, C: 1000, D: 40, length: 2300 }] },
    { rows: [{ size: "H20", shape: "1000 +9 200 -9 1000", length: 2200 }] },
    { rows: [{ size: "H20", shape: "21", A: 500, B: 300, C: 500, length: 1225 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H20", shape: "1000 +9 100 -9 1000", length: 2100 }],
      says: [
        {
          cell: "H2",
          message:
            "crank offset of the path 35.4 mm leaves 15.4 mm between centre lines, below the bar's 20 mm",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "26", A: 1000, B: 300, C: 1000, D: 35, length: 2300 }],
      says: [
        {
          cell: "L2",
          message: "crank offset D 35 mm leaves 15 mm between centre lines, below the bar's 20 mm",
        },
      ],
    },
  ],
});
