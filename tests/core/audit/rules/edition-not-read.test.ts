import rule from "../../../../core/audit/rules/edition-not-read";
import { ruleCases } from "../rule-cases";

const ROW = { size: "H16", shape: "21", A: 1000, B: 400, C: 500, length: 1850 };

ruleCases(rule, {
  silent: [
    { standard: "BS8666:2005", rows: [ROW] },
    { standard: "EC2:2004", rows: [{ size: "16", length: 1000 }] },
  ],
  speaks: [
    {
      standard: "BS8666:2020",
      rows: [ROW, ROW],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "BS8666:2020: the text of 2020 was not read: the numbers are those of 2005, and codes 48 and 52 are derived here; have them read in the standard, and confirm them on the sheet Standard",
        },
      ],
    },
  ],
});
