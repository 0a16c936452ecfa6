import rule from "../../../../core/audit/rules/members-counted-twice";
import { ruleCases } from "../rule-cases";

// 4 x 12 = 48; 4 x 48 = 192
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 48 }] },
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 12, total: 12 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 192 }],
      says: [
        {
          cell: "F2",
          message: "total 192 is 4 x 4 x 12: the members are multiplied twice",
          after: { F2: 48 },
        },
      ],
    },
  ],
});
