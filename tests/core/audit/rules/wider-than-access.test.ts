import rule from "../../../../core/audit/rules/wider-than-access";
import { ruleCases } from "../rule-cases";

// a limit of the workbook: an opening of 1200
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H25", shape: "21", A: 1500, B: 2000, C: 1500, length: 4875 }] },
    {
      rows: [{ size: "H25", shape: "21", A: 1200, B: 2000, C: 1200, length: 4275 }],
      limits: { accessWidth: 1200 },
    },
  ],
  speaks: [
    {
      rows: [{ size: "H25", shape: "21", A: 1205, B: 2000, C: 1205, length: 4275 }],
      limits: { accessWidth: 1200 },
      says: [
        {
          cell: "H2",
          message: "the bent bar is 1205 mm across its shorter side, over the opening of 1200 mm",
        },
      ],
    },
  ],
});
