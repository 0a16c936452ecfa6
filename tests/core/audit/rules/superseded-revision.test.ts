import rule from "../../../../core/audit/rules/superseded-revision";
import { ruleCases } from "../rule-cases";

// revision B follows A: common practice
ruleCases(rule, {
  silent: [
    {
      // another schedule with the same member and mark
      sheets: {
        "Ground floor": [
          { mark: "01", size: "H16", shape: "00", A: 1000, length: 1000, revision: "A" },
          { mark: "02", size: "H20", shape: "21", A: 500, B: 400, C: 500, length: 1325 },
          { mark: "03", size: "H10", shape: "51", A: 300, B: 200, length: 1125 },
        ],
        "First floor": [
          { mark: "01", size: "H16", shape: "00", A: 1100, length: 1100, revision: "B" },
          { mark: "02", size: "H12", shape: "11", A: 500, B: 400, length: 875 },
          { mark: "03", size: "H25", shape: "00", A: 4000, length: 4000 },
        ],
      },
    },
    {
      sheets: {
        "Culvert rev A": [{ mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "A" }],
        "Pump house rev B": [{ mark: "04", size: "H16", shape: "00", A: 1500, length: 1500, revision: "B" }],
      },
    },
    {
      // pages of one schedule, of which only the second was revised
      sheets: {
        "Deck rev A": [{ mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 }],
        "Deck rev B": [{ mark: "11", size: "H16", shape: "00", A: 1500, length: 1500 }],
      },
    },
    {
      // nobody can say whether a number or a letter is later
      sheets: {
        "Deck rev A": [{ mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 }],
        "Deck rev 1": [{ mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 }],
      },
    },
    {
      rows: [
        { mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "B" },
        { mark: "05", size: "H16", shape: "00", A: 1500, length: 1500, revision: "A" },
      ],
    },
  ],
  speaks: [
    {
      // by the names of the sheets; the older holds a bar that was taken out, and one without a mark
      sheets: {
        "Rev A": [
          { mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 },
          { mark: "02", size: "H16", shape: "00", A: 1200, length: 1200 },
          { mark: "03", size: "H16", shape: "00", A: 1400, length: 1400 },
          { mark: null, size: "H16", shape: "00", A: 1600, length: 1600 },
        ],
        "Rev B": [
          { mark: "01", size: "H16", shape: "00", A: 1000, length: 1000 },
          { mark: "02", size: "H16", shape: "00", A: 1300, length: 1300 },
        ],
      },
      says: [
        {
          cell: "B2",
          message:
            "revision A of mark 01 is superseded by revision B in sheet Rev B, row 2: strike the row through",
        },
        {
          cell: "B3",
          message:
            "revision A of mark 02 is superseded by revision B in sheet Rev B, row 3: strike the row through",
        },
        {
          cell: "B4",
          message:
            "revision A of mark 03 is superseded: revision B in sheet Rev B has no such mark: strike the row through",
        },
        {
          cell: "B5",
          message:
            "this bar is of revision A, superseded by revision B in sheet Rev B: strike the row through",
        },
      ],
    },
    {
      // the sheet's revision before that of its rows: an unchanged row keeps its old letter
      sheets: {
        "Deck rev C": [{ mark: "01", size: "H16", shape: "00", A: 1000, length: 1000, revision: "-" }],
        "Deck rev B": [{ mark: "01", size: "H16", shape: "00", A: 1000, length: 1000, revision: "B" }],
      },
      says: [
        {
          cell: "N2",
          message:
            "revision B of mark 01 is superseded by revision C in sheet Deck rev C, row 2: strike the row through",
        },
      ],
    },
    {
      rows: [
        { mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "A" },
        { mark: "04", size: "H16", shape: "00", A: 1500, length: 1500, revision: "B" },
      ],
      says: [
        {
          cell: "N2",
          message: "revision A of mark 04 is superseded by revision B in row 3: strike the row through",
        },
      ],
    },
    {
      sheets: {
        Old: [{ mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, revision: "-" }],
        New: [{ mark: "04", size: "H16", shape: "00", A: 1500, length: 1500, revision: "A" }],
      },
      says: [
        {
          cell: "N2",
          message:
            "revision - of mark 04 is superseded by revision A in sheet New, row 2: strike the row through",
        },
      ],
    },
    {
      // no length to cut it by
      rows: [
        { mark: "04", size: "H16", remark: "superseded" },
        { mark: "05", size: "H16", shape: "00", A: 1000, length: 1000 },
      ],
      says: [{ cell: "N2", severity: "note", message: "mark 04 is noted as superseded and is in no total" }],
    },
    {
      rows: [{ mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, remark: "superseded" }],
      says: [{ cell: "N2", severity: "note", message: "mark 04 is noted as superseded and is in no total" }],
    },
    {
      rows: [
        { mark: "04", size: "H16", shape: "00", A: 1000, length: 1000, remark: "not required at lift shaft" },
        { mark: "05", size: "H16", shape: "00", A: 1200, length: 1200, remark: "not required" },
        { mark: "06", size: "H16", shape: "00", A: 1400, length: 1400, remark: "around void" },
      ],
      says: [
        {
          cell: "N2",
          severity: "doubtful",
          outcome: "unsure",
          message:
            'mark 04 counts, though its remark "not required at lift shaft" may take it out: strike the row through, or write "deleted" alone, if the whole bar is meant',
        },
        { cell: "N3", severity: "note", message: "mark 05 is noted as superseded and is in no total" },
      ],
    },
  ],
});
