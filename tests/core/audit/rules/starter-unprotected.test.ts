import rule from "../../../../core/audit/rules/starter-unprotected";
import { ruleCases } from "../rule-cases";

// 29 CFR 1926.701(b): protruding bars are guarded (osha.gov interpretation 2006-04-24)
ruleCases(rule, {
  silent: [
    {
      rows: [
        { size: "H20", shape: "11", A: 2500, B: 300, length: 2750, remark: "starter, projects 1500, caps" },
      ],
    },
    { rows: [{ size: "H20", shape: "11", A: 2000, B: 300, length: 2250, remark: "starter, projects 1200" }] },
  ],
  speaks: [
    {
      rows: [{ size: "H20", shape: "11", A: 2500, B: 300, length: 2750, remark: "starter, projects 1500" }],
      says: [
        {
          cell: "N2",
          message: "starters projecting 1500 mm (over 1200 mm) name no caps or other protection",
        },
      ],
    },
  ],
});
