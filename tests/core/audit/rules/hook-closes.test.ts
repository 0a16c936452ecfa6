import { expect } from "vitest";
import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/hook-closes";
import { ruleCases } from "../rule-cases";

const WIDE_GUARD = { guardRadius: 9000 };

// the tail of 1800 - 36 = 1764 leans by its sine of the springback: beyond 48 from 1.6 degrees on
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H12", shape: "13", A: 500, B: 72, C: 160, length: 700 }], shop: exampleShop() },
    { rows: [{ size: "H12", shape: "13", A: 1800, B: 72, C: 1800, length: 3625 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H12", shape: "13", A: 1800, B: 72, C: 1800, length: 3625 }],
      shop: exampleShop({ bender: WIDE_GUARD }),
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: expect.stringMatching(
            /^on Bench 2: bent back far enough, the tail of 1764 mm at bend 1 leans \d+(\.\d)? mm over, and the legs stand 48 mm apart$/,
          ) as string,
        },
      ],
    },
  ],
});
