import rule from "../../../../core/audit/rules/closed-link-in-open-place";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3: 51 is closed, 47 open
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H10", shape: "51", A: 500, B: 300, C: 130, length: 1775, remark: "closed" }] },
    { rows: [{ size: "H10", shape: "47", A: 500, B: 300, C: 130, length: 1550, remark: "open link" }] },
  ],
  speaks: [
    ...["open-topped link", "U-bar and cap"].map((remark) => ({
      rows: [{ size: "H10", shape: "51", A: 500, B: 300, C: 130, length: 1775, remark }],
      says: [
        {
          cell: "H2",
          outcome: "unsure" as const,
          message: "shape 51 is a closed link, but the remark asks for an open one",
        },
      ],
    })),
    {
      rows: [
        { size: "H10", shape: "51", A: 500, B: 300, C: 130, length: 1775, remark: "open link with cap" },
      ],
      says: [
        {
          cell: "H2",
          outcome: "unsure",
          message: "shape 51 is a closed link, but the remark asks for an open one",
        },
      ],
    },
  ],
});
