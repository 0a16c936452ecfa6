import rule from "../../../../core/audit/rules/said-to-wait";
import { ruleCases } from "../rule-cases";

const bar = { size: "H16", shape: "00", A: 1000, length: 1000 };
const says = (remark: string) => [
  {
    cell: "N2",
    outcome: "unsure" as const,
    severity: "doubtful" as const,
    message: `the remark "${remark}" holds this bar back: ask who wrote it, and take the remark out once it is cleared`,
  },
];

// what a shop takes for an order to wait: common practice
ruleCases(rule, {
  silent: [
    { rows: [{ ...bar, remark: "hold-down bar" }] },
    { rows: [{ ...bar, remark: "threshold beam" }] },
    { rows: [{ ...bar, remark: "T1" }] },
  ],
  speaks: [
    { rows: [{ ...bar, remark: "HOLD - awaiting RFI" }], says: says("HOLD - awaiting RFI") },
    { rows: [{ ...bar, remark: "on hold" }], says: says("on hold") },
    {
      rows: [{ ...bar, remark: "don't make - superseded by 07" }],
      says: says("don't make - superseded by 07"),
    },
    { rows: [{ ...bar, remark: "nicht freigegeben" }], says: says("nicht freigegeben") },
    { rows: [{ ...bar, remark: "no fabricar" }], says: says("no fabricar") },
  ],
});
