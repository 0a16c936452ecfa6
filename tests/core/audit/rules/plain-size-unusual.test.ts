import rule from "../../../../core/audit/rules/plain-size-unusual";
import { ruleCases } from "../rule-cases";

// common practice: plain rounds are rolled up to about 20 mm
ruleCases(rule, {
  silent: [
    { rows: [{ size: "R25", shape: "00", A: 600, length: 600, remark: "dowel, greased" }] },
    { rows: [{ size: "R20", shape: "11", A: 400, B: 400, length: 750 }] },
    { rows: [{ size: "H32", shape: "00", A: 3000, length: 3000 }] },
  ],
  speaks: [
    {
      rows: [{ size: "R25", shape: "00", A: 3000, length: 3000 }],
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message: "R25 is a plain round bar above 20 mm: check the type letter",
        },
      ],
    },
  ],
});
