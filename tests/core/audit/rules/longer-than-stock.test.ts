import rule from "../../../../core/audit/rules/longer-than-stock";
import { ruleCases } from "../rule-cases";

// BS 8666:2005 Table 3, note 4 names 6 and 12 m as examples; mills roll to 18 m to order (common practice)
ruleCases(rule, {
  silent: [
    // bars that are all of another document: 60 ft are to be had of them, 60 x 304.8 = 18288 mm
    { rows: [18135, 6000, 7000].map((length) => ({ size: "#5", length })) },
    // what is to be had is as long
    {
      rows: [{ size: "H20", shape: "00", A: 17000, length: 17000 }],
      foot: [{ remark: "stock length 18 m" }],
    },
    // where most bars are longer it is said of something else
    {
      rows: [6000, 6500, 7000].map((A) => ({ size: "H20", shape: "00", A, length: A })),
      foot: [{ remark: "stock length 5 m" }],
    },
    { rows: [{ size: "R10", shape: "SPIRAL", length: 73800 }] },
    { rows: [{ size: "H10", length: 44700, remark: "vom Ring" }] },
    { rows: [{ size: "H20", shape: "00", A: 20000, length: 20000, remark: "recouvrement 0,80" }] },
    ...[
      "přesah 800",
      "Übergreifungsstoß",
      "нахлёст 800",
      "搭接 560",
      "継手",
      "zakład 60 cm",
      "coupler at one end",
    ].map((remark) => ({ rows: [{ size: "H20", shape: "00", A: 20000, length: 20000, remark }] })),
    { rows: [{ size: "H20", shape: "00", A: 12000, length: 12000 }] },
    { rows: [{ size: "H20", shape: "00", A: 14000, length: 14000, remark: "lap 900 at middle" }] },
    { rows: [{ size: "H20", shape: "00", A: 14000, length: 14000 }], limits: { stockLength: 14000 } },
  ],
  speaks: [
    {
      // the list says itself how long its bars may be
      rows: [
        { size: "H20", shape: "00", A: 7650, length: 7650 },
        ...[5000, 5500, 6000].map((A) => ({ size: "H20", shape: "00", A, length: A })),
      ],
      foot: [{ remark: "no bar over 6.0 m to this site" }],
      says: [
        {
          cell: "G2",
          outcome: "unsure",
          message:
            'length 7650 mm is over the 6000 mm that N6 says ("no bar over 6.0 m to this site"), and no lap is named',
        },
      ],
    },
    {
      // with laps in the lengths a long one is meant
      rows: [
        { size: "H20", shape: "00", A: 20000, length: 20000 },
        ...[5000, 5500, 6000].map((A) => ({ size: "H20", shape: "00", A, length: A })),
      ],
      foot: [{ remark: "stock 12 m; laps included in the lengths" }],
      says: [
        {
          cell: "G2",
          severity: "note",
          outcome: "unsure",
          message: 'length 20000 mm is over the 12000 mm that N6 says ("stock 12 m"), and no lap is named',
        },
      ],
    },
    {
      // a lap that is denied is none
      rows: [{ size: "H20", shape: "00", A: 20000, length: 20000, remark: "no lap" }],
      says: [
        {
          cell: "G2",
          message:
            "length 20000 mm is over the stock length 12000 mm, and no lap is named: ask the designer where to lap",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "00", A: 12005, length: 12025 }],
      says: [
        {
          cell: "G2",
          severity: "note",
          message:
            "length 12025 mm is over the usual stock length 12000 mm: to be ordered, or lapped where the designer says",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "00", A: 18500, length: 18500 }],
      says: [
        {
          cell: "G2",
          message:
            "length 18500 mm is over the stock length 12000 mm, and no lap is named: ask the designer where to lap",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "00", A: 9500, length: 9500 }],
      limits: { stockLength: 9000 },
      says: [
        {
          cell: "G2",
          message:
            "length 9500 mm is over the stock length 9000 mm, and no lap is named: ask the designer where to lap",
        },
      ],
    },
  ],
});
