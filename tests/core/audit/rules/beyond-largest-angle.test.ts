import { expect } from "vitest";
import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/beyond-largest-angle";
import { ruleCases } from "../rule-cases";

const HOOK = { size: "H12", shape: "13", A: 500, B: 72, C: 160, length: 700 };

ruleCases(rule, {
  silent: [
    { rows: [HOOK], shop: exampleShop() },
    { rows: [HOOK] },
    { rows: [HOOK], shop: exampleShop({ bender: { largestAngle: null } }) },
  ],
  speaks: [
    {
      // 170 is below the 180 wanted, whatever the springback is
      rows: [HOOK],
      shop: exampleShop({ bender: { largestAngle: 170 } }),
      says: [
        {
          cell: "H2",
          message: expect.stringMatching(
            /^on Bench 2: bend 1 of 180 degrees is bent to 1[89]\d(\.\d)?, beyond the 170 that it turns: use another machine$/,
          ) as string,
        },
      ],
    },
    {
      // every bar comes back by more than one degree in 180, but how far no trial says
      rows: [HOOK],
      shop: exampleShop({ bender: { largestAngle: 181 } }),
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: expect.stringMatching(
            /^on Bench 2: bend 1 of 180 degrees needs about 1\d\d(\.\d)?, a guess without trials, and it turns 181: make/,
          ) as string,
        },
      ],
    },
  ],
});
