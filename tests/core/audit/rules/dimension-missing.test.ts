import rule from "../../../../core/audit/rules/dimension-missing";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3: 21 takes A, B, C; 51 takes A, B, C and, where it differs, D
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] },
    { rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 130, length: 1575 }] },
    { rows: [{ size: "H16", shape: "00", length: 6000 }] },
  ],
  speaks: [
    {
      rows: [{ size: "H16", shape: "21", A: 500, B: 400, length: 1350 }],
      says: [{ cell: "K2", message: "shape 21 needs C, which is blank" }],
    },
    {
      rows: [{ size: "H16", shape: "21", C: 500, length: 1350 }],
      says: [
        { cell: "I2", message: "shape 21 needs A, which is blank" },
        { cell: "J2", message: "shape 21 needs B, which is blank" },
      ],
    },
    {
      rows: [{ size: "H16", shape: "00" }],
      says: [{ cell: "I2", message: "shape 00 needs A, which is blank" }],
    },
  ],
});
