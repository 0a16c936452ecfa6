import rule from "../../../../core/audit/rules/unknown-size";
import { ruleCases } from "../rule-cases";

// sizes of BS 8666:2005: 6 8 10 12 16 20 25 32 40 50 (scribd.com/document/526661066)
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H12", shape: "00", A: 1000, length: 1000 }] },
    // another rule's: digits the wrong way round, and fabric
    { rows: [{ size: "H61", shape: "00", A: 1000, length: 1000 }] },
    { rows: [{ size: "A142", shape: "00", A: 1000, length: 1000 }] },
  ],
  speaks: [
    {
      // rolled in Italy, Poland and Turkey, and not in EN 10080: common practice
      standard: "EC2:2004",
      rows: [{ size: "22", shape: "00", A: 1000, length: 1000 }],
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          severity: "note",
          message: "size 22 is rolled in some countries alone: see that it can be had",
        },
      ],
    },
    {
      rows: [{ size: "H13", shape: "00", A: 1000, length: 1000 }],
      says: [
        {
          cell: "C2",
          // 7850 kg/m3 x 13 mm x 13 mm x pi / 4 = 1.0420 kg/m
          message:
            'size "H13" is no bar of BS8666:2005: it holds 6, 8, 10, 12, 16, 20, 25, 32, 40, 50; its mass is taken as 1.042 kg/m and nothing else of it was judged',
        },
      ],
    },
    {
      rows: [{ size: null, shape: "00", A: 1000, length: 1000 }],
      says: [{ cell: "C2", message: "no size is given" }],
    },
  ],
});
