import rule from "../../../../core/audit/rules/total-differs";
import { ruleCases } from "../rule-cases";

// 4 x 12 = 48
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 48 }] },
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: null, each: 12, total: 12 }] },
    // multiplied twice is another rule's
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 192 }] },
  ],
  speaks: [
    {
      // 50 x 1 m at 1.579 kg/m (BS 8666:2005, Table 1) = 78.95 kg: the mass bears the total out
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 50, mass: 78.95 },
      ],
      says: [{ cell: "F2", message: "total 50 is not 4 x 12 = 48, members times bars in each" }],
    },
    {
      rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, members: 4, each: 12, total: 47 }],
      says: [
        { cell: "F2", message: "total 47 is not 4 x 12 = 48, members times bars in each", after: { F2: 48 } },
      ],
    },
  ],
});
