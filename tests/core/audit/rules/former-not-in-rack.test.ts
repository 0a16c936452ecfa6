import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/former-not-in-rack";
import { ruleCases } from "../rule-cases";

const BAR = { size: "H16", shape: "11", A: 500, B: 400, length: 875 };
const NOTHING_KNOWN = {
  largestAngle: null,
  guardRadius: null,
  orbitRadius: null,
  backRestDistance: null,
  pins: null,
  formers: null,
};

// BS 8666:2005 Table 2 asks for 64 at 16 mm; the rack of the example holds 40, 48, 64 and 140
ruleCases(rule, {
  silent: [
    { rows: [BAR], shop: exampleShop() },
    { rows: [{ ...BAR, former: 80 }] },
    { rows: [{ ...BAR, former: 80 }], shop: exampleShop({ bender: NOTHING_KNOWN }) },
    {
      rows: [{ ...BAR, former: 80 }],
      shop: exampleShop({
        secondBender: { machine: "Bench 3", formers: 80 },
        plates: [
          ["Bench 2", "bend", "H20", 500, 2],
          ["Bench 3", "bend", "H20", 500, 2],
        ],
      }),
    },
    // B 75 is a semicircle of 75 - 24 = 51 inside, and a width may be out by 5 (BS 8666:2005 Table 6): 48 will do
    { rows: [{ size: "H12", shape: "13", A: 500, B: 75, C: 160, length: 700 }], shop: exampleShop() },
    { rows: [{ size: "H16", shape: "00", A: 500, length: 500, former: 80 }], shop: exampleShop() },
  ],
  speaks: [
    {
      rows: [{ ...BAR, former: 80 }],
      shop: exampleShop(),
      says: [
        {
          cell: "N2",
          message:
            "on Bench 2: no former of 80 mm is in the rack, which holds 40 mm, 48 mm, 64 mm, 140 mm: get one, or use another machine",
        },
      ],
    },
    {
      // the other bender's rack is not known
      rows: [{ ...BAR, former: 80 }],
      shop: exampleShop({ secondBender: { machine: "Old one", ...NOTHING_KNOWN } }),
      says: [
        {
          cell: "N2",
          outcome: "unsure",
          message:
            "on Bench 2, the nearest of 2 benders: no former of 80 mm is in the rack, which holds 40 mm, 48 mm, 64 mm, 140 mm: get one, or use another machine",
        },
      ],
    },
    {
      rows: [{ size: "H20", shape: "12", A: 500, B: 500, R: 75, length: 950 }],
      shop: exampleShop(),
      says: [
        {
          cell: "N2",
          message:
            "on Bench 2: no former of 150 mm is in the rack, which holds 40 mm, 48 mm, 64 mm, 140 mm: get one, or use another machine",
        },
      ],
    },
    {
      // 100 - 24 = 76 inside; a yard may make such a U in two bends, and says so by two right angles: this one has no former
      rows: [{ size: "H12", shape: "13", A: 500, B: 100, C: 160, length: 700 }],
      shop: exampleShop(),
      says: [
        {
          cell: "H2",
          severity: "unbendable",
          message:
            "on Bench 2: no former of 76 mm is in the rack, which holds 40 mm, 48 mm, 64 mm, 140 mm: get one, or use another machine",
        },
      ],
    },
    {
      rows: [BAR],
      shop: exampleShop({ bender: { formers: "48, 140, 70" } }),
      says: [
        {
          cell: "H2",
          severity: "doubtful",
          message:
            "on Bench 2: no former of 64 mm is in the rack; on the next larger, 70 mm, lengths and inside widths come out otherwise: get the former, or use another machine",
        },
      ],
    },
  ],
});
