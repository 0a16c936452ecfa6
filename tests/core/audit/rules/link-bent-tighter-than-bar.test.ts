import rule from "../../../../core/audit/rules/link-bent-tighter-than-bar";
import { ruleCases } from "../rule-cases";

// GB 50204-2015 5.3.1: 1kaoti.com d088cda9ad; 2.5 x 8 = 20 < 25. IS 456 26.2.2.4 b): civilsnapshot.com
const LINK = "hook135 450 +90 200 +90 450 +90 200 hook135";

ruleCases(rule, {
  silent: [
    {
      standard: "GB50204:2015",
      rows: [
        { member: "B1", size: "20", shape: "00", A: 6000, length: 6000 },
        { member: "B1", size: "8", grade: "HPB300", shape: LINK, length: 1500 },
      ],
    },
    {
      rows: [
        { member: "B1", size: "H40", shape: "00", A: 6000, length: 6000 },
        { member: "B1", size: "H8", shape: "51", A: 500, B: 200, C: 115, length: 1525 },
      ],
    },
  ],
  speaks: [
    {
      standard: "GB50204:2015",
      rows: [
        { member: "B1", size: "25", shape: "00", A: 6000, length: 6000 },
        { member: "B1", size: "8", grade: "HPB300", shape: LINK, length: 1500 },
        { member: "B2", size: "8", grade: "HPB300", shape: LINK, length: 1500 },
      ],
      says: [
        {
          cell: "C3",
          outcome: "unsure",
          message:
            "bent on 20 mm the link holds bars of 25 mm no closer than its legs: 25 mm is asked for; ask the designer",
        },
      ],
    },
    {
      standard: "IS2502:1963",
      rows: [
        { member: "B1", size: "T8", shape: "00", A: 6000, length: 6000 },
        { member: "B1", size: "T10", shape: LINK, length: 1500, former: 40 },
      ],
      says: [
        {
          cell: "C3",
          outcome: "unsure",
          message:
            "a link of 10 mm is bent round bars of 8 mm, where bars of its own size at least are asked for: ask the designer",
        },
      ],
    },
  ],
});
