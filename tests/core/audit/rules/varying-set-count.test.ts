import rule from "../../../../core/audit/rules/varying-set-count";
import { ruleCases } from "../rule-cases";

// 1200, 1250, ... 1800: 600 / 50 + 1 = 13 lengths
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H12", shape: "00", A: "1200-1800 step 50", members: 1, each: 13, total: 13 }] },
    { rows: [{ size: "H12", shape: "00", A: "1200-1800 step 50", members: 1, each: 26, total: 26 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H12", shape: "00", A: "1200-1800 step 50", members: 1, each: 12, total: 12 }],
      says: [
        { cell: "E2", message: "1200 mm to 1800 mm in steps of 50 mm are 13 lengths, but 12 bars are given" },
      ],
    },
  ],
});
