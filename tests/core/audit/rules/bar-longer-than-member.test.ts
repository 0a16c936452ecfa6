import rule from "../../../../core/audit/rules/bar-longer-than-member";
import { ruleCases } from "../rule-cases";

// 6000 - 2 x 40 = 5920
ruleCases(rule, {
  silent: [
    // a bar of a clear span is anchored in the columns
    {
      rows: [{ member: "B1", size: "H16", shape: "00", A: 7200, length: 7200, remark: "clear span 6000" }],
    },
    {
      rows: [
        { member: "B1", size: "H16", shape: "00", A: 5920, length: 5925, remark: "length 6000 cover 40" },
      ],
    },
    { rows: [{ member: "B1", size: "H16", shape: "00", A: 8000, length: 8000, remark: "bottom" }] },
    // other measures of the beam and of the bar
    {
      rows: ["h=600", "depth 1200", "lap length 1000", "anchorage length 1200", "total length 7200"].map(
        (remark) => ({ member: "B1", size: "H16", shape: "00", A: 8000, length: 8000, remark }),
      ),
    },
  ],
  speaks: [
    {
      rows: [
        { member: "B1", size: "H16", shape: "00", A: 5925, length: 5925, remark: "length 6000 cover 40" },
      ],
      says: [
        {
          cell: "I2",
          outcome: "unsure",
          message:
            "straight bar of 5925 mm is over the 5920 mm that the member of 6000 mm leaves, unless it runs on into the next",
        },
      ],
    },
  ],
});
