import rule from "../../../../core/audit/rules/coupler-end-unsaid";
import { ruleCases } from "../rule-cases";

// common practice: ends for couplers are sawn
ruleCases(rule, {
  silent: [
    {
      rows: [
        { size: "H25", shape: "00", A: 6000, length: 6000, remark: "coupler one end, saw cut and threaded" },
      ],
    },
    { rows: [{ size: "H25", shape: "00", A: 6000, length: 6000, remark: "top" }] },
  ],
  speaks: [
    {
      rows: [{ size: "H25", shape: "00", A: 6000, length: 6000, remark: "coupler one end" }],
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "the bar takes a coupler, but no end preparation is named: sawn, threaded or as the coupler's maker says",
        },
      ],
    },
  ],
});
