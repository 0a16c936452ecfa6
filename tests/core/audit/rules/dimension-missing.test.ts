import rule from "../../../../core/audit/rules/dimension-missing";
import { ruleCases } from "../rule-cases";

const LEFT =
  "B, the free dimension of shape 11, is blank, as in most rows of that code: it is what the length leaves";

// BS 8666:2005 Table 3: 21 takes A, B, C; 51 takes A, B, C and, where it differs, D
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] },
    { rows: [{ size: "H10", shape: "51", A: 400, B: 300, C: 130, length: 1575 }] },
    { rows: [{ size: "H16", shape: "00", length: 6000 }] },
    // 20 is the straight bar of SANS 282
    { standard: "SANS282:2011", rows: [{ size: "Y16", shape: "20", length: 6000 }] },
  ],
  speaks: [
    {
      // pages print BS 4466's code 38 as A + B + (C) - r - 2d; that of SANS 282 is recalled
      standard: "BS4466:1989",
      rows: [{ size: "T16", shape: "38", A: 500, C: 500, length: 1350 }],
      says: [{ cell: "J2", message: "shape 38 needs B, which is blank" }],
    },
    {
      standard: "SANS282:2011",
      rows: [{ size: "Y16", shape: "38", A: 500, C: 500, length: 1350 }],
      says: [
        { cell: "J2", outcome: "unsure", severity: "doubtful", message: "shape 38 needs B, which is blank" },
      ],
    },
    {
      // recalled, and not the whole list: the code may have other letters
      standard: "ISO3766:2003",
      rows: [{ size: "10", shape: "13", A: 260, B: 60, former: 40, length: 380 }],
      says: [
        { cell: "K2", outcome: "unsure", severity: "note", message: "shape 13 needs C, which is blank" },
      ],
    },
    {
      // D is no part of the length A + B + (C): only the drawing asks for it, and that was not seen
      rows: [{ size: "H12", shape: "26", A: 1500, B: 350, C: 900, length: 2750 }],
      says: [
        { cell: "L2", outcome: "unsure", severity: "doubtful", message: "shape 26 needs D, which is blank" },
      ],
    },
    {
      // ACI 315 type 2 has a bend at one end or at both: without either it is no type 2
      standard: "ACI318:2019",
      rows: [{ size: "#8", shape: "2", B: 104, length: 104 }],
      says: [{ cell: "I2", outcome: "unsure", severity: "note", message: "shape 2 needs A, which is blank" }],
    },
    {
      rows: [{ size: "H16", shape: "21", A: 500, B: 400, length: 1350 }],
      says: [{ cell: "K2", message: "shape 21 needs C, which is blank" }],
    },
    {
      // the dimension in brackets is free: a list that never gives it leaves it to the length
      rows: [
        { size: "H16", shape: "11", A: 500, length: 1350 },
        { size: "H16", shape: "11", A: 600, length: 1450 },
        { size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 },
        { size: "H16", shape: "21", A: 500, B: 400, length: 1350 },
      ],
      says: [
        { cell: "J2", severity: "note", outcome: "unsure", message: LEFT },
        { cell: "J3", severity: "note", outcome: "unsure", message: LEFT },
        { cell: "K5", message: "shape 21 needs C, which is blank" },
      ],
    },
    {
      // shape 15 has B and D on its drawing, and its length A + (C) takes neither
      rows: [{ size: "H16", shape: "15", A: 900, C: 1100, D: 400, length: 2000 }],
      says: [
        { cell: "J2", outcome: "unsure", severity: "note", message: "shape 15 needs B, which is blank" },
      ],
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
