import rule from "../../../../core/audit/rules/reading-failed";
import { ruleCases } from "../rule-cases";

const bar = (size: string) => ({ size, shape: "00", A: 1000, length: 1000, members: 1, each: 10, total: 10 });

ruleCases(rule, {
  silent: [
    { rows: ["H16", "H16", "H16", "H17", "H17"].map(bar) },
    // four rows are too few to tell
    { rows: ["H17", "H17", "H17", "H17"].map(bar) },
  ],
  speaks: [
    {
      rows: ["H17", "H17", "H17", "H17", "H16"].map(bar),
      says: [
        {
          cell: null,
          message:
            "4 of 5 rows stand in no total, most for want of a bar size of the standard: the sheet was not read as it is meant",
        },
      ],
    },
  ],
});
