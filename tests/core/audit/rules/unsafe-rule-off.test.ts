import rule from "../../../../core/audit/rules/unsafe-rule-off";
import { ruleCases } from "../rule-cases";

const rows = [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }];
const kept = (rulesOff: readonly unknown[]): string => JSON.stringify({ rulesOff });

ruleCases(rule, {
  silent: [{ rows }, { rows, kept: kept(["LEN103"]) }],
  speaks: [
    {
      rows,
      kept: kept(["BEND101", { code: "MACHINE102", reason: "known", by: "A. Detailer", date: "2031-03-02" }]),
      says: [
        {
          cell: null,
          message:
            "the workbook turns off BEND101 former too small (no name given, no date given: no reason given), which finds what is unsafe: that is not obeyed; waive the rows that are accepted, and turn the rule on",
        },
        {
          cell: null,
          message:
            "the workbook turns off MACHINE102 beyond plate (by A. Detailer, 2031-03-02: known), which finds what is unsafe: that is not obeyed; waive the rows that are accepted, and turn the rule on",
        },
      ],
    },
  ],
});
