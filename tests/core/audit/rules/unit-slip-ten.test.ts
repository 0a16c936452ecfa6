import rule from "../../../../core/audit/rules/unit-slip-ten";
import { ruleCases } from "../rule-cases";

// by hand, as for length-differs: 500 + 400 - 16 - 16 = 868, up to 875
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] },
    { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 8000 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 8750 }],
      says: [
        {
          cell: "G2",
          message: "length 8750 mm would agree with the rest of the row as 875 mm",
          after: { G2: 875 },
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 5000, B: 400, length: 875 }],
      says: [
        {
          cell: "I2",
          message: "A 5000 mm would agree with the rest of the row as 500 mm",
          after: { I2: 500 },
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 40, length: 875 }],
      says: [
        { cell: "J2", message: "B 40 mm would agree with the rest of the row as 400 mm", after: { J2: 400 } },
      ],
    },
  ],
});
