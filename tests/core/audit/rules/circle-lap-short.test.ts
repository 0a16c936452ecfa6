import rule from "../../../../core/audit/rules/circle-lap-short";
import { ruleCases } from "../rule-cases";

// common practice in North America: circular ties overlap 6 in, 150 mm
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H10", shape: "75", A: 500, B: 150, length: 1700 }] },
    // a welded pile ring: its lap is the weld
    { rows: [{ size: "H10", shape: "75", A: 500, B: 100, length: 1650, remark: "ring, lap welded 10d" }] },
    { rows: [{ size: "H10", shape: "51", A: 500, B: 130, C: 130, length: 1450 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H10", shape: "75", A: 500, B: 145, length: 1700 }],
      says: [{ cell: "J2", outcome: "unsure", message: "a lap of 145 mm is below 150 mm: ask the designer" }],
    },
  ],
});
