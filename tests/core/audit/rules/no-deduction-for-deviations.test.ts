import rule from "../../../../core/audit/rules/no-deduction-for-deviations";
import { ruleCases } from "../rule-cases";

// from memory: BS 8110-1 Table 3.24; 300 - 2 x 40 = 220, 600 - 80 = 520, 500 - 80 = 420
ruleCases(rule, {
  silent: [
    {
      rows: [
        { member: "B1 300x600 cover 40", size: "H10", shape: "51", A: 510, B: 210, C: 130, length: 1600 },
      ],
    },
    { rows: [{ member: "B1 300x600", size: "H10", shape: "51", A: 520, B: 220, C: 130, length: 1650 }] },
  ],
  speaks: [
    {
      rows: [
        {
          mark: "1",
          member: "B1 300x600 cover 40",
          size: "H10",
          shape: "51",
          A: 520,
          B: 220,
          C: 130,
          length: 1650,
        },
        {
          mark: "2",
          member: "B2 300x500 cover 40",
          size: "H10",
          shape: "51",
          A: 420,
          B: 220,
          C: 130,
          length: 1450,
        },
        {
          mark: "3",
          member: "B3 300x500 cover 40",
          size: "H10",
          shape: "51",
          A: 410,
          B: 210,
          C: 130,
          length: 1400,
        },
      ],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "2 of the links, such as mark 1, fill the section less 40 mm cover exactly: usual is to take 10 mm to 20 mm off for deviations",
        },
      ],
    },
  ],
});
