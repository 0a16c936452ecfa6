import rule from "../../../../core/audit/rules/one-bar-two-marks";
import { ruleCases } from "../rule-cases";

// common practice
ruleCases(rule, {
  silent: [
    {
      // bent about another former, or coated, they are not the same bar
      rows: [
        { member: "B1", mark: "03", size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 64 },
        { member: "B1", mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 80 },
        { member: "B1", mark: "08", size: "H16", shape: "11", A: 500, B: 400, length: 875, coating: "epoxy" },
      ],
    },
    {
      rows: [
        { member: "B1", mark: "03", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { member: "B2", mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { member: "B1", mark: "08", size: "H16", shape: "11", A: 525, B: 400, length: 900 },
        {
          member: "B1",
          mark: "09",
          size: "H12",
          shape: "98",
          A: 300,
          B: 300,
          C: 300,
          D: 300,
          length: 1450,
          remark: "2 as drawn, 2 opposite hand, pair",
        },
      ],
    },
  ],
  speaks: [
    {
      rows: [
        { member: "B1", mark: "03", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { member: "B1", mark: "07", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
      ],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message: "1 mark names the same bar as another of their member, such as 03 and 07",
        },
      ],
    },
    {
      rows: [
        {
          member: "B1",
          mark: "09",
          size: "H12",
          shape: "98",
          A: 300,
          B: 300,
          C: 300,
          D: 300,
          length: 1450,
          remark: "handed pairs",
        },
      ],
      says: [
        {
          cell: "N2",
          severity: "doubtful",
          outcome: "unsure",
          message: "the bars are handed: say how many are as drawn and how many of the opposite hand",
        },
      ],
    },
  ],
});
