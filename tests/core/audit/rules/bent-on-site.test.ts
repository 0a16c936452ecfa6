import rule from "../../../../core/audit/rules/bent-on-site";
import { ruleCases } from "../rule-cases";

// from memory: EN 13670 6.3, re-bending only where specified
ruleCases(rule, {
  silent: [{ rows: [{ size: "H12", shape: "21", A: 600, B: 200, C: 600, length: 1350, remark: "top" }] }],
  speaks: [
    {
      // NZ Practice Advisory 11: starters meant for it are 300E, 16 mm at most
      standard: "NZS3109:1997",
      rows: [
        { size: "D20", shape: "1000 +90 500", length: 1430, remark: "rebend on site" },
        { size: "HD12", shape: "1000 +90 500", length: 1460, remark: "starter, bend out later" },
        { size: "D12", shape: "1000 +90 500", length: 1460, remark: "starter, bend out later" },
      ],
      says: [
        {
          cell: "N2",
          severity: "unsafe",
          message: "the remark has the bar bent again: D20 is over the 16 mm that may be; ask the designer",
        },
        {
          cell: "N3",
          severity: "unsafe",
          message: "the remark has the bar bent again: 500E is not, 300E is; ask the designer",
        },
        {
          cell: "N4",

          message: "the remark has the bar bent on site: only as the specification allows, ask the designer",
        },
      ],
    },
    {
      rows: [{ size: "H12", shape: "21", A: 600, B: 200, C: 600, length: 1350, remark: "rebend on site" }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message: "the remark has the bar bent on site: only as the specification allows, ask the designer",
        },
      ],
    },
  ],
});
