import rule from "../../../../core/audit/rules/unit-slip-thousand";
import { ruleCases } from "../rule-cases";

// by hand, as for length-differs: 500 + 400 - 16 - 16 = 868, up to 875
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { size: "H16", shape: "11", A: 500, B: 400, length: 0.875 },
      ],
      says: [
        {
          cell: "G4",
          message: "length 0.875 mm agrees with the rest of the row as 875 mm, and is read and weighed so",
          after: { G4: 875 },
        },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { size: "H16", shape: "11", A: 500, B: 400, length: 875000 },
      ],
      says: [
        {
          cell: "G4",
          message: "length 875000 mm would agree with the rest of the row as 875 mm",
          after: { G4: 875 },
        },
      ],
    },
  ],
});
