import rule from "../../../../core/audit/rules/unknown-shape";
import { ruleCases } from "../rule-cases";

// codes of BS 8666:2005 Table 3 (35 of them): 38 and 48 are none; 48 is one of the 2020 edition
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H16", shape: "21", A: 500, B: 400, C: 500, length: 1350 }] },
    { rows: [{ size: "H16", shape: "500 +90 400", length: 875 }] },
    // no list of shapes is held for this standard: one note of the sheet says so
    { standard: "CSA-A23.1:2019", rows: [{ size: "15M", shape: "17", A: 1000, B: 750, length: 1700 }] },
    { standard: "ACI318:2019", rows: [{ size: "#5", shape: 2, A: 10, B: 30, length: 40 }] },
  ],
  speaks: [
    {
      // a US list leaves the type of straight bars blank: common practice
      standard: "ACI318:2019",
      rows: [
        { size: "#5", shape: "17", A: 40, B: 30, length: 68 },
        { size: "#5", shape: "17", A: 40, B: 30, length: 68 },
        { size: "#5", shape: null, length: 240 },
        { size: "#5", shape: "3", A: 7, B: 60, C: 20, length: 150 },
      ],
      says: [
        {
          cell: "H4",
          outcome: "unsure",
          severity: "note",
          message: "no shape is given, and no dimension: taken as straight",
        },
        {
          cell: "H5",
          outcome: "unsure",
          severity: "note",
          message:
            "shape 3 is none of the codes that are held of ACI318:2019, so it was not checked: write the bar as a path, or enter the code on the sheet Standard",
        },
      ],
    },
    {
      // their lists are recalled and not whole: what is missing in them is told as not checked
      standard: "SANS282:2011",
      rows: [
        { size: "Y16", shape: "38", A: 500, B: 400, C: 500, length: 1320 },
        { size: "Y16", shape: "81", A: 500, B: 400, length: 1400 },
      ],
      says: [
        {
          cell: "H3",
          outcome: "unsure",
          severity: "note",
          message:
            "shape 81 is none of the codes that are held of SANS282:2011, so it was not checked: write the bar as a path, or enter the code on the sheet Standard",
        },
      ],
    },
    {
      rows: [{ size: "H10", shape: "48", A: 500, B: 400, C: 150, length: 1675 }],
      says: [
        {
          cell: "H2",
          message: "shape 48 is no code of BS8666:2005, but is one of BS8666:2020, SANS282:2011, BS4466:1989",
        },
      ],
    },
    {
      rows: [{ size: "H16", shape: "97", A: 500, B: 400, C: 500, length: 1350 }],
      says: [
        {
          cell: "H2",
          message:
            "shape 97 is no code of BS8666:2005: write the bar as a path, or enter the code on the sheet Standard",
        },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { size: "H16", shape: "11", A: 500, B: 400, length: 875 },
        { size: "H16", shape: null, length: 875 },
      ],
      says: [{ cell: "H4", outcome: "unsure", message: "no shape code is given" }],
    },
  ],
});
