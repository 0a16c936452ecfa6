import rule from "../../../../core/audit/rules/formula-differs-from-geometry";
import { ruleCases } from "../rule-cases";

// by hand: 22 in 16 mm, A 500, B 500, C 400, D 300. Printed 500 + 500 + 400 + 300 - 48 - 48 = 1604.
// Exact: straights 452, 252, 100 and arcs pi/2 x 40 = 62.83, pi x 192 = 603.19 make 1470.0
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "21", A: 500, B: 500, C: 500, length: 1450 }] },
    { rows: [{ size: "H16", shape: "22", A: 500, B: 500, C: 100, D: 300, length: 1325 }] },
  ],
  speaks: [
    {
      // by hand, 29 in 16 mm: the printed A + B + (C) - r - 2d = 500 + 400 + 400 - 32 - 32 = 1236;
      // the course has a slope of its own, whose bends take less than the right angles that the formula takes
      rows: [{ size: "H16", shape: "29", A: 500, B: 400, C: 400, D: 250, length: 1250 }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          severity: "doubtful",
          message:
            "the printed formula gives 1236 mm, 51.3 mm short of the centre line 1287.3 mm: the free leg comes out shorter",
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "22", A: 500, B: 500, C: 400, D: 300, length: 1625 }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: "the printed formula gives 1604 mm, the centre line 1470 mm: 134 mm in the free leg",
        },
      ],
    },
  ],
});
