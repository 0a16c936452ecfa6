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
    {
      // a sheet of another standard's sizes: a length that cannot be read is one in any of them
      rows: [
        ...["#5", "#6", "#8", "#4"].map((size) => ({ size, length: "9'-4\"" })),
        { size: "#6", length: "12'-14\"" },
      ],
      says: [
        {
          cell: "G6",
          outcome: "unsure",
          message:
            'cut length "12\'-14"" could not be read: length "12\'-14"" has 14 in beside feet, where the inches stay below 12: write one or the other',
        },
      ],
    },
  ],
});
