import rule from "../../../../core/audit/rules/both-faces-count";
import { ruleCases } from "../rule-cases";

// two equal faces give an even number
ruleCases(rule, {
  silent: [
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 12, total: 12, remark: "EF" },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 11, total: 11, remark: "NF" },
      ],
    },
  ],
  speaks: [
    {
      // 85 places side by side, of which each face has its own bar: other rows have as many
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 85, total: 85, remark: "EF" },
        { size: "H12", shape: "00", A: 2000, length: 2000, members: 1, each: 85, total: 85 },
      ],
      says: [
        {
          cell: "E2",
          severity: "note",
          message: "85 bars for two faces is odd: are both faces counted?",
        },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 11, total: 11, remark: "E.F." },
      ],
      says: [{ cell: "E2", message: "11 bars for two faces is odd: are both faces counted?" }],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 11, total: 11, remark: "EF" },
      ],
      says: [{ cell: "E2", message: "11 bars for two faces is odd: are both faces counted?" }],
    },
  ],
});
