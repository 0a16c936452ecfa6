import rule from "../../../../core/audit/rules/wider-than-transport";
import { ruleCases } from "../rule-cases";

// BS 8666:2005: the shorter side of the rectangle round the bar at most 2750 (from memory); a U of 3000 has a shorter side of 3000
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H25", shape: "21", A: 2750, B: 3000, C: 2750, length: 8375 }] },
    { rows: [{ size: "H25", shape: "11", A: 9000, B: 2000, length: 10950 }] },
    { rows: [{ size: "H25", shape: "00", A: 12000, length: 12000 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H25", shape: "21", A: 2755, B: 3000, C: 2755, length: 8375 }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: "the bent bar is 2755 mm across its shorter side, over the 2750 mm that transport takes",
        },
      ],
    },
    {
      rows: [{ size: "H25", shape: "75", A: 2800, B: 500, length: 9225 }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: "the bent bar is 2800 mm across its shorter side, over the 2750 mm that transport takes",
        },
      ],
    },
  ],
});
