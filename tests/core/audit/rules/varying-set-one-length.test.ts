import rule from "../../../../core/audit/rules/varying-set-one-length";
import { ruleCases } from "../rule-cases";

// one length for 1200 to 1800 is the mean, 1500
ruleCases(rule, {
  silent: [
    // two legs joined in one cell: 300 + 2200
    { rows: [{ size: "H12", A: "300-2200", length: 2500 }] },
    { rows: [{ size: "H12", shape: "00", A: "1200-1800 step 50", members: 1, each: 13, total: 13 }] },
  ],
  speaks: [
    {
      rows: [
        { size: "H12", shape: "00", A: "1200-1800 step 50", length: 1500, members: 1, each: 13, total: 13 },
      ],
      says: [
        {
          cell: "G2",
          message: "A varies, but one length of 1500 mm is given for the set: give each bar its length",
        },
      ],
    },
  ],
});
