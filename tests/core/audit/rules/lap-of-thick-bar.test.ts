import rule from "../../../../core/audit/rules/lap-of-thick-bar";
import { ruleCases } from "../rule-cases";

// from memory: EN 1992-1-1 8.8(4), 32 mm; ACI 318 25.5.1.1, above #11 (1.41 in)
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H32", shape: "00", A: 12000, length: 12000, remark: "lap 1600" }] },
    { rows: [{ size: "H40", shape: "00", A: 12000, length: 12000, remark: "coupled, no lap" }] },
    { rows: [{ size: "H40", shape: "00", A: 12000, length: 12000, remark: "B1" }] },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#11", shape: "00", A: 240, length: 240, remark: "splice 6 ft" }],
    },
  ],
  speaks: [
    {
      rows: [
        { size: "H40", shape: "00", A: 12000, length: 12000, remark: "lap 1600" },
        { size: "H40", shape: "00", A: 12000, length: 12000, remark: "lapped" },
      ],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message: "H40 is lapped: bars over 32 mm are as a rule not; ask the designer",
        },
        {
          cell: "N3",
          outcome: "unsure",
          message: "H40 is lapped: bars over 32 mm are as a rule not; ask the designer",
        },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#14", shape: "00", A: 240, length: 240, remark: "lap splice" }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message: '#14 is lapped: bars over 1.41" are as a rule not; ask the designer',
        },
      ],
    },
  ],
});
