import rule from "../../../../core/audit/rules/straight-between-bends-short";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3, notes (fendersteel.co.uk/codesbs2005notes.html): at least 4d straight between two bends
// valbruna.co.uk, least overall dimension over two bends: 160 for 16 mm, 260 for 20, 325 for 25
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "21", A: 400, B: 160, C: 400, length: 900 }] },
    { rows: [{ size: "H20", shape: "21", A: 400, B: 260, C: 400, length: 950 }] },
    { rows: [{ size: "H25", shape: "21", A: 500, B: 325, C: 500, length: 1200 }] },
    { rows: [{ size: "H20", shape: "11", A: 400, B: 200, length: 550 }] },
  ],
  speaks: [
    {
      // 155 - 2 x (32 + 16) = 59, against 4 x 16
      rows: [{ size: "H16", shape: "21", A: 400, B: 155, C: 400, length: 900 }],
      says: [
        {
          cell: "J2",
          message: "straight of 59 mm between two bends is below 64 mm (4 bar diameters) for H16",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "400 +90 255 +90 400", length: 950 }],
      says: [
        {
          cell: "H2",
          message: "straight of 75 mm between two bends is below 80 mm (4 bar diameters) for H20",
        },
      ],
    },
  ],
});
