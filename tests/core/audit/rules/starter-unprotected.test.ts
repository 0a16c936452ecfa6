import rule from "../../../../core/audit/rules/starter-unprotected";
import { ruleCases } from "../rule-cases";

// 29 CFR 1926.701(b): protruding bars are guarded of any diameter and length (osha.gov interpretations 1994-03-23, 2006-04-24)
ruleCases(rule, {
  silent: [
    {
      rows: [
        { size: "H20", shape: "11", A: 2500, B: 300, length: 2750, remark: "starter, projects 1500, caps" },
      ],
    },
  ],
  speaks: [
    {
      standard: "ACI318:2019",
      rows: ["projects 43 in", `projects 4'-6"`, 'proj. 30"'].map((remark) => ({
        ...{ size: "#5", shape: "60in +90 12in", length: "70.5in", remark },
      })),
      says: [
        { cell: "N2", message: "starters projecting 3'-7\" name no caps or other protection" },
        { cell: "N3", message: "starters projecting 4'-6\" name no caps or other protection" },
        { cell: "N4", message: "starters projecting 2'-6\" name no caps or other protection" },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#5", shape: "40 +90 12", length: 50, remark: "dowel, projects 240" }],
      says: [{ cell: "N2", message: 'starters projecting 9.449" name no caps or other protection' }],
    },
    {
      rows: [{ size: "H12", shape: "11", A: 1400, B: 300, length: 1675, remark: "starter, projects 600" }],
      says: [
        {
          cell: "N2",
          severity: "note",
          message: "starters projecting 600 mm name no caps or other protection",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "11", A: 2500, B: 300, length: 2750, remark: "starter, projects 1500" }],
      says: [
        {
          cell: "N2",
          severity: "note",
          message: "starters projecting 1500 mm name no caps or other protection",
        },
      ],
    },
  ],
});
