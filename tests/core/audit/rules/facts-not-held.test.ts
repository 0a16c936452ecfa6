import rule from "../../../../core/audit/rules/facts-not-held";
import { ruleCases } from "../rule-cases";

// one note for the sheet names what it does not hold
ruleCases(rule, {
  silent: [
    {
      // the sheet's name says the revision of all its rows
      sheets: { "Deck rev A": [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16, former: 64 }] },
    },
    { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16, former: 64, revision: "A" }] },
  ],
  speaks: [
    {
      // no page gives a former for 25 mm of Fe 500: IS 2502 speaks of anchored ends only
      standard: "IS2502:1963",
      rows: [
        { size: 25, shape: "1000 +90 500", length: 1450, mass: 5.58, revision: "A" },
        { size: 25, shape: "1000 +90 500", length: 1450, mass: 5.58, former: 100, revision: "A" },
        { size: 16, shape: "1000 +90 500", length: 1470, mass: 2.32, revision: "A" },
      ],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "IS2502:1963 holds no least former for 1 of the bars, such as 25, so their bends and lengths were not checked: write the former that will be used",
        },
      ],
    },
    {
      // legs without a shape: nothing tells a web of 20 mm between two legs from a bar that can be bent
      standard: "DIN-EC2:2013",
      rows: [
        { size: 8, shape: "700 +90 300", length: 980, mass: 0.39, former: 32, revision: "A" },
        { size: 8, A: 300, B: 20, C: 30, length: 350, mass: 0.14, former: 32, revision: "A" },
      ],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "1 row with several dimensions and a blank shape: no bend, end or length of such a bar was checked (rows 3): write the shape as a path",
        },
      ],
    },
    {
      standard: "CSA-A23.1:2019",
      rows: [
        { size: "15M", shape: "17", A: 1000, B: 750, length: 1700, mass: 2.67, former: 100, revision: "A" },
        { size: "15M", shape: "1000 +90 750", length: 1700, mass: 2.67, former: 100, revision: "A" },
      ],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "CSA-A23.1:2019 holds no list of shapes, so 1 of the shapes, such as 17, were not checked (rows 2): write them as paths, or enter the codes on the sheet Standard",
        },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      says: [
        {
          cell: null,
          outcome: "unsure",
          message:
            "the sheet does not hold the formers that will be used, superseded revisions, so they were not checked",
        },
      ],
    },
  ],
});
