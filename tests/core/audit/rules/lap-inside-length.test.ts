import rule from "../../../../core/audit/rules/lap-inside-length";
import { ruleCases } from "../rule-cases";

// 12000 + 2350 of lap
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "00", A: 11000, length: 11000 }] }],
  speaks: [
    {
      rows: [{ size: "H16", shape: "00", length: "12000+2350 (lap)" }],
      says: [
        { cell: "G2", message: "the length holds a lap of 2350 mm: split it into the bars that are cut" },
      ],
    },
  ],
});
