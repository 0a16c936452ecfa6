import rule from "../../../../core/audit/rules/formulas-uncalculated";
import { ruleCases } from "../rule-cases";

const waiting = { error: "#N/A", uncalculated: true } as const;

// a program that writes a workbook without calculating leaves the results out
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] },
    { rows: [{ size: "H16", shape: "00", A: 1000, length: { error: "#REF!" } }] },
  ],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000 },
        { size: "H16", shape: "00", A: 1000, length: waiting, mass: waiting },
        { size: "H16", shape: "00", A: 1000, length: waiting },
      ],
      says: [
        {
          cell: "G3",
          outcome: "unsure",
          message:
            "formulas without a result in 3 cells of 2 bar rows, this one first: open the workbook in a spreadsheet program, save it, and check again",
        },
      ],
    },
  ],
});
