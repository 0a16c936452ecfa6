import rule from "../../../../core/audit/rules/unit-slip-foreign";
import { ruleCases } from "../rule-cases";

// by hand: 868 up to 875 mm, which is 34.4 in; 87.5 cm is another rule by ten
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  speaks: [
    {
      rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 34.4 }],
      says: [
        {
          cell: "G2",
          message:
            "length 34.4 mm would agree with the rest of the row as 875 mm: another unit by a factor of 25.4",
          after: { G2: 875 },
        },
      ],
    },
  ],
});
