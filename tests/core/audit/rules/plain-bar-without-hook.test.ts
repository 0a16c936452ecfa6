import rule from "../../../../core/audit/rules/plain-bar-without-hook";
import { ruleCases } from "../rule-cases";

// common practice: plain bars in tension are anchored by hooks
ruleCases(rule, {
  silent: [
    { rows: [{ size: "R10", shape: "21", A: 300, B: 300, C: 300, length: 875 }] },
    { rows: [{ size: "R16", shape: "00", A: 600, length: 600, remark: "dowel" }] },
    { rows: [{ size: "H10", shape: "00", A: 3000, length: 3000 }] },
  ],
  speaks: [
    {
      rows: [{ size: "R10", shape: "00", A: 3000, length: 3000 }],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message:
            "R10 is a plain bar scheduled straight, without hooks: ask the designer how it is anchored",
        },
      ],
    },
  ],
});
