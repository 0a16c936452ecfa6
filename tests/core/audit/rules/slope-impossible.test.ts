import rule from "../../../../core/audit/rules/slope-impossible";
import { ruleCases } from "../rule-cases";

// geometry: a slope of 300 cannot rise 350
ruleCases(rule, {
  silent: [
    // the leg that slopes may be A: 2050 = 3900 sin t
    { rows: [{ size: "H12", shape: "15", A: 3900, B: 2050, C: 900, length: 4800 }] },
    { rows: [{ size: "H16", shape: "26", A: 500, B: 300, C: 500, D: 150, length: 1300 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "26", A: 500, B: 300, C: 500, D: 350, length: 1300 }],
      says: [
        {
          cell: "L2",
          outcome: "unsure",
          message:
            "no bend angle from 0 to 90 degrees fits B 300 mm, D 350 mm: D = B sin t + d cos t cannot be met",
        },
      ],
    },
  ],
});
