import { exampleShop } from "../../../../core/audit/example-shop";
import rule from "../../../../core/audit/rules/beyond-plate";
import { ruleCases } from "../rule-cases";

const BENT = { shape: "11", A: 900, B: 900, length: 1700 };
const RACK = { formers: "64, 140, 175, 224", orbitRadius: 250 };

// scaled by (rated / bar)^3 x (rated grade / grade): 32 mm at 500 MPa takes no 32 mm at 600 (0.83 of a bar)
ruleCases(rule, {
  silent: [
    // no such bar: which size is meant is asked first
    {
      rows: [{ size: "B61", shape: "00", A: 3000, length: 3000 }],
      shop: exampleShop({ plates: [["Shear 1", "cut", "H25", 500, 1]] }),
    },
    { rows: [{ size: "H25", ...BENT }] },
    {
      rows: [{ size: "H25", ...BENT }],
      shop: exampleShop({ bender: RACK, plates: [["Bench 2", "bend", "H32", 500, 1]] }),
    },
    // the plate is not written down: one note of another rule, none here
    { rows: [{ size: "H32", ...BENT }], shop: exampleShop({ bender: RACK, plates: [] }) },
    // a shear that is not rated may cut it, and a straight bar is not bent
    {
      rows: [{ size: "H32", shape: "00", A: 3000, length: 3000 }],
      shop: exampleShop({
        plates: [
          ["Bench 2", "bend", "H12", 500, 1],
          ["Shear 1", "cut", "H32", 500, 0],
          ["Shear 2", "cut", "H32", 500, 1],
        ],
      }),
    },
  ],
  speaks: [
    {
      rows: [{ size: "H25", ...BENT }],
      shop: exampleShop({ bender: RACK, plates: [["Bench 2", "bend", "H25", 500, 0]] }),
      says: [
        {
          cell: "C2",
          message:
            "on Bench 2: the plate allows no H25 bar of 500 MPa; it is rated for 0 of 25 mm at 500 MPa: use another machine",
        },
      ],
    },
    {
      rows: [{ size: "H32", grade: "600", ...BENT }],
      shop: exampleShop({ bender: RACK, plates: [["Bench 2", "bend", "H32", 500, 1]] }),
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message:
            "on Bench 2: by an estimate from the plate's 1 of 32 mm at 500 MPa not one H32 bar of 600 MPa is to be bent: ask the maker",
        },
      ],
    },
    {
      rows: [{ size: "H32", shape: "00", A: 3000, length: 3000 }],
      shop: exampleShop({ plates: [["Shear 1", "cut", "H32", 500, 0]] }),
      says: [
        {
          cell: "C2",
          message:
            "on Shear 1: the plate allows no H32 bar of 500 MPa to be cut; it is rated for 0 of 32 mm at 500 MPa: use another machine",
        },
      ],
    },
    {
      // (25 / 32)^2 = 0.61 of a bar
      rows: [{ size: "H32", shape: "00", A: 3000, length: 3000 }],
      shop: exampleShop({ plates: [["Shear 1", "cut", "H25", 500, 1]] }),
      says: [
        {
          cell: "C2",
          outcome: "unsure",
          message:
            "on Shear 1: by an estimate from the plate's 1 of 25 mm at 500 MPa not one H32 bar of 500 MPa is to be cut: ask the maker",
        },
      ],
    },
  ],
});
