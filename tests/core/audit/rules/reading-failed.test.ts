import rule from "../../../../core/audit/rules/reading-failed";
import { ruleCases } from "../rule-cases";

const bar = (size: string) => ({ size, shape: "00", A: 1000, length: 1000, members: 1, each: 10, total: 10 });

ruleCases(rule, {
  silent: [
    { rows: ["H16", "H16", "H16", "H17", "H17"].map(bar) },
    // one row says nothing of the sheet, nor do two of three
    { rows: ["H17"].map(bar) },
    { rows: ["H17", "H17", "H16"].map(bar) },
  ],
  speaks: [
    {
      // the column is headed as it should be: its figures are no counts
      rows: [-10, 2.5, -4, 10].map((total) => ({ ...bar("H16"), members: null, each: null, total })),
      says: [
        {
          cell: null,
          message:
            '3 of 4 rows stand in no total, most for want of a number of bars: column F "Total no." was read as total number, but 3 of its cells hold none, such as "-10" in F2: correct them',
        },
      ],
    },
    {
      rows: ["H16", "H16"].map((size) => ({ ...bar(size), each: null, total: null })),
      says: [
        {
          cell: null,
          message:
            '2 of 2 rows stand in no total, most for want of a number of bars: the sheet was not read as it is meant: column D "No. of members" was read as number of members; head the column that counts the bars "Total no.", or say what it holds',
        },
      ],
    },
    {
      rows: ["H17", "H17", "H17", "H17", "H16"].map(bar),
      says: [
        {
          cell: null,
          message:
            '4 of 5 rows stand in no total, most for want of a bar size of the standard: the sheet was not read as it is meant: column C "Type and size" was read as bar size; choose the standard that the sizes are of',
        },
      ],
    },
  ],
});
