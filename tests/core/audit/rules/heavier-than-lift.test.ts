import rule from "../../../../core/audit/rules/heavier-than-lift";
import { ruleCases } from "../rule-cases";

// UK table: 6.313 kg/m for 32 mm, so 25 kg at 3.96 m; 9.864 for 40 mm: 12 m weigh 118.37 kg
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H32", shape: "00", A: 3950, length: 3950 }] },
    { rows: [{ size: "H32", shape: "00", A: 6000, length: 6000 }], limits: { handLift: 40 } },
  ],
  speaks: [
    {
      rows: [{ size: "H32", shape: "00", A: 3975, length: 3975 }],
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message: "one bar weighs 25.09 kg, above the 25 kg at which lifting by hand is to be planned",
        },
      ],
    },
    {
      rows: [{ size: "H40", shape: "00", A: 12000, length: 12000 }],
      limits: { hoist: 100 },
      says: [
        {
          cell: "G2",
          severity: "unsafe",
          message:
            "one bar weighs 118.37 kg, above the 100 kg that the hoist may lift: lift it with what is rated for it",
        },
      ],
    },
  ],
});
