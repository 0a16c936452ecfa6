import rule from "../../../../core/audit/rules/settings-unread";
import { ruleCases } from "../rule-cases";

const rows = [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }];
const START = "the settings kept in the workbook under the name Barwright.Audit could not be read: ";
const END = "; put the name right, or delete it";

ruleCases(rule, {
  silent: [{ rows }, { rows, kept: " " }, { rows, kept: '{"limits":{"hoist":2000}}' }],
  speaks: [
    {
      rows,
      kept: "{not json",
      says: [
        {
          cell: null,
          outcome: "unsure",
          message: `${START}they are no JSON object, so every rule is run, no limit is changed, no finding is waived, no column is corrected${END}`,
        },
      ],
    },
    {
      rows,
      kept: '{"silences":[{"code":"LEN102"}],"rulesOff":["SUM101"]}',
      says: [
        {
          cell: null,
          outcome: "unsure",
          message: `${START}waivers.0.sheet: Invalid input: expected string, received undefined, so no finding is waived${END}`,
        },
      ],
    },
  ],
});
