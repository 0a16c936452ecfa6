import rule from "../../../../core/audit/rules/said-to-be-supplied";
import { ruleCases } from "../rule-cases";

const bar = (remark: string) => ({ size: "H16", shape: "00", A: 1000, length: 1000, remark });
const says = (remark: string) =>
  `the bar counts, though its remark "${remark}" says that it is supplied: ask, and strike the row through where it is not to be made`;

// remarks of bars that are on site already, or that another firm brings: common practice
ruleCases(rule, {
  silent: [
    { rows: [bar("deliver with P2")] },
    { rows: [bar("supply loose")] },
    { rows: [bar("fixed on site")] },
    // out of every total by its own words, which another rule tells
    { rows: [bar("deleted")] },
  ],
  speaks: ["already supplied", "by others", "delivered on load 3", "bauseits"].map((remark) => ({
    rows: [bar(remark)],
    says: [{ cell: "N2", outcome: "unsure" as const, message: says(remark) }],
  })),
});
