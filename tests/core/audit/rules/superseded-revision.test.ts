import rule from "../../../../core/audit/rules/superseded-revision";
import { ruleCases } from "../rule-cases";

// revision B follows A: common practice
ruleCases(rule, {
  silent: [
    {
      rows: [
        { mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "B" },
        { mark: "05", size: "H16", shape: "00", A: 1500, length: 1500, revision: "A" },
      ],
    },
  ],
  speaks: [
    {
      rows: [
        { mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "A" },
        { mark: "04", size: "H16", shape: "00", A: 1500, length: 1500, revision: "B" },
      ],
      says: [{ cell: "N2", message: "revision A of mark 04 is superseded by revision B in row 3" }],
    },
    {
      sheets: {
        Old: [{ mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "-" }],
        New: [{ mark: "04", size: "H16", shape: "00", A: 1500, length: 1500, revision: "A" }],
      },
      says: [
        { cell: "N2", message: "revision - of mark 04 is superseded by revision A in sheet New, row 2" },
      ],
    },
    {
      rows: [{ mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, remark: "superseded" }],
      says: [{ cell: "N2", message: "mark 04 is noted as superseded, but still counts" }],
    },
  ],
});
