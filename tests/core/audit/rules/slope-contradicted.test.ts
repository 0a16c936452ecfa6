import rule from "../../../../core/audit/rules/slope-contradicted";
import { ruleCases } from "../rule-cases";

const bar = (A: number, B: number, C: number, D: number) => ({
  rows: [{ size: "H20", shape: "15", A, B, C, D, length: A + C }],
});

// geometry: the hypotenuse over 600 and 560 is 820.7
ruleCases(rule, {
  silent: [
    bar(1150, 600, 820, 560),
    // to the outsides: 600 = 800 sin 47.5 + 20 cos 47.5, and 560 = 800 cos 47.5 + 20 sin 47.5 + 5
    bar(1150, 600, 800, 560),
    // the leg that slopes may be A, and the reach may be that of the whole bar
    bar(820, 600, 1150, 560),
    bar(400, 600, 820, 960),
    { rows: [{ size: "H20", shape: "15", A: 700, B: 600, C: 1250, length: 1950 }] },
  ],
  speaks: [
    {
      ...bar(700, 600, 1250, 560),
      says: [
        {
          cell: "K2",
          outcome: "unsure",
          message:
            "leg C of 1250 mm cannot rise B 600 mm over D 560 mm, which make a leg of 821 mm: ask the designer which of the three is meant",
        },
      ],
    },
  ],
});
