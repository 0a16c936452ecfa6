import rule from "../../../../core/audit/rules/own-cell-not-taken";
import { ruleCases } from "../rule-cases";

const HEADS = ["standard", "figure", "your copy says", "who looked", "when"];
const ROWS = [{ size: "H12", shape: "00", A: 900, length: 900 }];
const FIGURE = ["BS8666:2020", "least former: d 16, diameter"];

ruleCases(rule, {
  silent: [
    { standard: "BS8666:2020", rows: ROWS, own: [HEADS, [...FIGURE, 64, "R. Ashdown", "2026-11-02"]] },
    // not looked up yet
    { standard: "BS8666:2020", rows: ROWS, own: [HEADS, [...FIGURE, null, null, null]] },
  ],
  speaks: [
    {
      standard: "BS8666:2020",
      rows: ROWS,
      own: [
        HEADS,
        [...FIGURE, 640, "R. Ashdown", "2026-11-02"],
        ["BS8666:2020", "least former: d 12, diameter", 48, "", ""],
      ],
      says: [
        {
          cell: "C2",
          message:
            '"640": 640 where 64 is held: look at the unit, which is that of the line; the line is not in force',
        },
        {
          cell: "D3",
          message: "write who looked: a figure that nobody signs is not taken; the line is not in force",
        },
      ],
    },
  ],
});
