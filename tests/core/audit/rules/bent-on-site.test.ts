import rule from "../../../../core/audit/rules/bent-on-site";
import { ruleCases } from "../rule-cases";

// from memory: EN 13670 6.3, re-bending only where specified
ruleCases(rule, {
  silent: [{ rows: [{ size: "H12", shape: "21", A: 600, B: 200, C: 600, length: 1350, remark: "top" }] }],
  speaks: [
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
