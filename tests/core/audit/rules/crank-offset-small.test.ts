import rule from "../../../../core/audit/rules/crank-offset-small";
import { ruleCases } from "../rule-cases";

// by hand: an overall offset of 35 leaves 35 - 20 = 15 between the centre lines of a 20 mm bar
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H20", shape: "26", A: 1000, B: 300, C: 1000, D: 40, length: 2300 }] },
    { rows: [{ size: "H20", shape: "21", A: 500, B: 300, C: 500, length: 1225 }] },
  ],
  speaks: [
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
