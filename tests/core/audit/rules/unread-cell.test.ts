import rule from "../../../../core/audit/rules/unread-cell";
import { ruleCases } from "../rule-cases";

// a cell is read or named
ruleCases(rule, {
  silent: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  speaks: [
    {
      // beside a number the spacing is context
      rows: [
        { size: "H16", shape: "00", A: 500, length: 500, members: 1, each: 4, total: 4, spacing: "two rows" },
      ],
      says: [
        {
          cell: "N2",
          severity: "note",
          outcome: "unsure",
          message: 'spacing "two rows" could not be read: "two rows" is no length',
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "11", A: { error: "#REF!" }, B: 400, length: 875 }],
      says: [
        {
          cell: "I2",
          outcome: "unsure",
          message: 'dimension A "#REF!" could not be read: the cell holds the error #REF!',
        },
      ],
    },
  ],
});
