import rule from "../../../../core/audit/rules/mark-gap";
import { ruleCases } from "../rule-cases";

// 01 to 08 without 04
ruleCases(rule, {
  silent: [
    {
      rows: ["01", "02", "03", "04", "05", "06"].map((mark) => ({
        mark,
        size: "H16",
        shape: "00",
        A: 1000,
        length: 1000,
      })),
    },
    {
      rows: ["10", "20", "30", "40", "50", "60"].map((mark) => ({
        mark,
        size: "H16",
        shape: "00",
        A: 1000,
        length: 1000,
      })),
    },
    { rows: ["01", "03"].map((mark) => ({ mark, size: "H16", shape: "00", A: 1000, length: 1000 })) },
  ],
  speaks: [
    {
      rows: ["01", "02", "03", "05", "06", "07", "08"].map((mark) => ({
        mark,
        size: "H16",
        shape: "00",
        A: 1000,
        length: 1000,
      })),
      says: [{ cell: "B5", severity: "note", outcome: "unsure", message: "mark 04 is missing before 05" }],
    },
    {
      rows: ["S1", "S2", "S3", "S4", "S7", "S8", "S9"].map((mark) => ({
        mark,
        size: "H16",
        shape: "00",
        A: 1000,
        length: 1000,
      })),
      says: [
        { cell: "B6", severity: "note", outcome: "unsure", message: "marks S5 to S6 are missing before S7" },
      ],
    },
  ],
});
