import rule from "../../../../core/audit/rules/weld-of-unweldable-steel";
import { ruleCases } from "../rule-cases";

// from memory: CSA G30.18, W is weldable and R is regular; ACI 318 26.6.4
ruleCases(rule, {
  silent: [
    {
      standard: "CSA-A23.1:2019",
      rows: [
        { size: "20M", grade: "400W", shape: "00", A: 3000, length: 3000, remark: "weld to plate" },
        { size: "20M", grade: "400R", shape: "00", A: 3000, length: 3000, remark: "do not weld" },
        { size: "20M", grade: "400R", shape: "00", A: 3000, length: 3000, remark: "top" },
      ],
    },
  ],
  speaks: [
    {
      standard: "CSA-A23.1:2019",
      rows: [{ size: "20M", grade: "400R", shape: "00", A: 3000, length: 3000, remark: "tack welded" }],
      says: [
        {
          cell: "O2",
          outcome: "unsure",
          message: "400R is noted as welded and is not made for it: ask the designer",
        },
      ],
    },
    {
      // the remark names another grade than the sheet
      standard: "CSA-A23.1:2019",
      rows: [{ size: "20M", grade: "400W", shape: "00", A: 3000, length: 3000, remark: "400R, tack weld" }],
      says: [
        {
          cell: "O2",
          outcome: "unsure",
          message: "400R is noted as welded and is not made for it: ask the designer",
        },
      ],
    },
    {
      standard: "ACI318:2019",
      rows: [{ size: "#5", grade: "Grade 60", shape: "00", A: 120, length: 120, remark: "weld to angle" }],
      says: [
        {
          cell: "O2",
          outcome: "unsure",
          message: "Grade 60 is noted as welded and is not made for it: ask the designer",
        },
      ],
    },
  ],
});
