import rule from "../../../../core/audit/rules/outdated-waiver";
import { ruleCases } from "../rule-cases";

const rows = [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }];

function kept(waiver: Record<string, unknown>): string {
  return JSON.stringify({ waivers: [{ sheet: "Schedule", reason: "agreed", ...waiver }] });
}

ruleCases(rule, {
  silent: [
    { rows },
    // of a sheet that is not read here
    { rows, kept: kept({ code: "LEN102", sheet: "Other", key: "B1 | 01" }) },
  ],
  speaks: [
    {
      rows,
      kept: kept({ code: "LEN102", key: "B1 | 01" }),
      says: [
        {
          cell: "B2",
          message: `the waiver of LEN102 for B1 | 01 ("agreed") no longer applies: delete it`,
        },
      ],
    },
    {
      rows,
      kept: kept({ code: "LEN102", key: "B1 | 77" }),
      says: [
        {
          cell: null,
          message: `the waiver of LEN102 for B1 | 77 ("agreed") no longer applies: delete it`,
        },
      ],
    },
    {
      rows,
      kept: kept({ code: "MASS102", key: null }),
      says: [
        {
          cell: null,
          message: `the waiver of MASS102 for the whole sheet ("agreed") no longer applies: delete it`,
        },
      ],
    },
  ],
});
