import rule from "../../../../core/audit/rules/unknown-grade";
import { ruleCases } from "../rule-cases";

// type letters of BS 8666:2005 Table 1 (from memory): H A B C S X, and R and T of older drawings; Q is none
ruleCases(rule, {
  silent: [
    // Norway's B500NC is B500C; JIS G 3112 of 2010 wrote SD295A: from memory
    { standard: "ISO3766:2003", rows: [{ size: "16", shape: "00", A: 1000, length: 1000, grade: "B500NC" }] },
    { standard: "JASS5:2018", rows: [{ size: "D16", shape: "00", A: 1000, length: 1000, grade: "SD295A" }] },
    // a grade by its number, as lists in inches write it
    { standard: "ACI318:2019", rows: [{ size: "#5", shape: "40 +90 30", length: 68, grade: 60 }] },
    { standard: "ACI318:2019", rows: [{ size: "#5", shape: "40 +90 30", length: 68, grade: "Gr. 60" }] },
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] },
    { rows: [{ size: "16", shape: "00", A: 1000, length: 1000 }] },
  ],
  speaks: [
    {
      standard: "EC2:2004",
      rows: [{ size: "16", shape: "00", A: 1000, length: 1000, grade: "B550B" }],
      says: [
        {
          cell: "N2",
          severity: "note",
          outcome: "unsure",
          message:
            'grade "B550B" is none that EC2:2004 lists; no former of EC2:2004 hangs on the grade, so the bends were checked all the same',
        },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000 },
        { size: "H16", shape: "00", A: 1500, length: 1500 },
        { size: "16", shape: "00", A: 2000, length: 2000 },
      ],
      says: [
        {
          cell: "C4",
          outcome: "unsure",
          message: "no grade is given, while most rows of the sheet give one",
        },
      ],
    },
    {
      rows: [{ size: "Q16", shape: "00", A: 1000, length: 1000 }],
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message: 'grade "Q" is none of BS8666:2005: it holds H, A, B, C, S, X, R, T, Y',
        },
      ],
    },
  ],
});
