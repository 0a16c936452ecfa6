import rule from "../../../../core/audit/rules/mark-missing";
import { ruleCases } from "../rule-cases";

// a bundle is found by its mark: common practice
ruleCases(rule, {
  silent: [
    { rows: [{ mark: null, size: "H16", shape: "00", A: 1000, length: 1000 }] },
    { rows: [{ mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 }] },
  ],
  speaks: [
    {
      rows: [
        { mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 },
        { mark: null, size: "H16", shape: "00", A: 1500, length: 1500 },
        { mark: "03", size: "H16", shape: "00", A: 2000, length: 2000 },
      ],
      says: [{ cell: "B3", message: "no mark is given" }],
    },
  ],
});
