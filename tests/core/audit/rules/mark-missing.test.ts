import rule from "../../../../core/audit/rules/mark-missing";
import { ruleCases } from "../rule-cases";

// a bundle is found by its mark: common practice
ruleCases(rule, {
  silent: [
    { rows: [{ mark: null, size: "H16", shape: "00", A: 1000, length: 1000 }] },
    { rows: [{ mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 }] },
    // a placing list marks its bent bars only: straight ones go by size and length
    {
      rows: [
        { mark: null, size: "H16", shape: "00", A: 1000, length: 1000 },
        { mark: null, size: "H20", shape: "00", A: 2000, length: 2000 },
        { mark: "1601", size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { mark: "1602", size: "H16", shape: "11", A: 600, B: 400, length: 975 },
        { mark: "1603", size: "H16", shape: "11", A: 700, B: 400, length: 1075 },
      ],
    },
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
